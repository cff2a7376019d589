using Microsoft.EntityFrameworkCore;
using WearWatch.Signals;
using WearWatch.Storage;

namespace WearWatch.Plant.Mappings;

/// <summary>The mappings that read, as this process knows them. Changes of other processes come with the next look.</summary>
/// <remarks>Thread-safe: the list is exchanged as a whole.</remarks>
public sealed class ActiveMappings(IDbContextFactory<WearDb> databases)
{
    private volatile IReadOnlyList<SignalMapping>? known;

    /// <summary>Something is read otherwise than before.</summary>
    public event Action? Changed;

    /// <summary>The filters of the topics of JSON; empty before the first look.</summary>
    public IReadOnlyList<string> Filters =>
        [.. OfJson(known ?? []).Select(m => m.Topic.Filter).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>Whether a mapping reads a topic of JSON.</summary>
    public bool Wants(string topic) => OfJson(known ?? []).Any(m => m.Topic.Match(topic) is not null);

    /// <summary>
    /// Filters that some version had and none has now: a broker that keeps a session may still send what they find.
    /// </summary>
    public async Task<IReadOnlyList<string>> FormerFiltersAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var topics = await db.SignalMappings.Where(m => m.Source == SignalSource.MqttJson).Select(m => m.Topic).Distinct()
            .ToListAsync(ct);
        return [.. topics.Select(t => TopicPattern.Read(t, out _)?.Filter).OfType<string>().Distinct().Except(Filters)];
    }

    /// <summary>Looks for changes.</summary>
    public async Task RefreshAsync(CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var before = known;
        known = await LoadAsync(db, ct);
        if (before is null || !Ids(before).SequenceEqual(Ids(known))) Changed?.Invoke();
    }

    /// <summary>The mappings, looked for within a transaction when they never were.</summary>
    internal async Task<IReadOnlyList<SignalMapping>> AskAsync(WearDb db, CancellationToken ct) =>
        known ??= await LoadAsync(db, ct);

    private static IEnumerable<SignalMapping> OfJson(IEnumerable<SignalMapping> mappings) =>
        mappings.Where(m => m.Row.Source == SignalSource.MqttJson);

    private static IEnumerable<int> Ids(IEnumerable<SignalMapping> mappings) => mappings.Select(m => m.Row.Id);

    private static async Task<IReadOnlyList<SignalMapping>> LoadAsync(WearDb db, CancellationToken ct) =>
        [.. (await db.LatestMappings.Where(m => m.IsActive).OrderBy(m => m.Id).ToListAsync(ct))
            .Select(row => SignalMapping.Of(row, out _)).OfType<SignalMapping>()];
}
