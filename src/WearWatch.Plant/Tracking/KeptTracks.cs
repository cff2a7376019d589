using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Tracking;

/// <summary>The stored tracks: where a chain's next review carries on.</summary>
internal static class KeptTracks
{
    /// <summary>Another build may follow a chain in other steps; it starts from the raw readings once.</summary>
    private static readonly string Build = typeof(WearFilter).Module.ModuleVersionId.ToString("N");

    /// <summary>Names what a stored track belongs to.</summary>
    public static string VersionOf(string knowledge) => $"{knowledge} build {Build}";

    /// <summary>The stored tracks of chains that belong to this knowledge and build.</summary>
    public static async Task<Dictionary<int, CarriedTrack>> LoadAsync(
        WearDb db, IReadOnlyCollection<int> ids, Knowledge knowledge, CancellationToken ct)
    {
        var version = VersionOf(knowledge.Version);
        var rows = await db.Tracks.AsNoTracking().Where(t => EF.Parameter(ids).Contains(t.ChainId) && t.Version == version)
            .ToListAsync(ct);
        return rows.ToDictionary(
            t => t.ChainId, t => JsonSerializer.Deserialize<CarriedTrack>(t.State, JsonSerializerOptions.Default)!);
    }

    /// <summary>Puts the tracks of chains that have moved in place of the stored ones.</summary>
    public static async Task KeepAsync(WearDb db, IReadOnlyList<ReviewedChain> moved, CancellationToken ct)
    {
        int[] ids = [.. moved.Select(m => m.Raw.Id)];
        var kept = await db.Tracks.Where(t => EF.Parameter(ids).Contains(t.ChainId)).ToDictionaryAsync(t => t.ChainId, ct);
        foreach (var chain in moved)
        {
            var track = chain.Assessment.Carried;
            var (version, state) =
                (VersionOf(chain.ModelVersion), JsonSerializer.Serialize(track, JsonSerializerOptions.Default));
            long? last = track.Observations is [.., var newest]
                ? chain.Raw.ReadingRows[newest.Observation.ReadingIndex].Id
                : null;
            if (kept.GetValueOrDefault(chain.Raw.Id) is { } row)
                (row.Version, row.LastReadingId, row.State) = (version, last, state);
            else db.Tracks.Add(new TrackRow { ChainId = chain.Raw.Id, Version = version, LastReadingId = last, State = state });
        }
    }
}
