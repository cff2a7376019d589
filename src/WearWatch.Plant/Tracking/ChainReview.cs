using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Tracking;

/// <summary>Assesses chains from their raw rows and keeps what changed: forecasts and notices.</summary>
public sealed class ChainReview(
    IDbContextFactory<WearDb> database, PlantSettings plant, Calibrations calibrations, PlantNews news, TimeProvider clock)
{
    private const int ChainsAtOnce = 32;

    /// <summary>Reviews chains.</summary>
    /// <param name="chainIds">Which; null for all.</param>
    /// <param name="progress">Told after each batch.</param>
    /// <param name="ct">Stops between two batches.</param>
    /// <returns>How many chains have a new forecast or another notice.</returns>
    public async Task<int> ReviewAsync(
        IReadOnlyCollection<int>? chainIds, IProgress<ReviewProgress>? progress = null, CancellationToken ct = default)
    {
        var calendar = await plant.CalendarAsync(ct);
        var knowledge = await calibrations.KnowledgeAsync(ct);
        var ids = new Queue<int>(chainIds ?? await AllAsync(ct));
        var (total, changed) = (ids.Count, 0);
        while (ids.Count > 0)
        {
            ct.ThrowIfCancellationRequested();
            var batch = new List<int>();
            while (batch.Count < ChainsAtOnce && ids.TryDequeue(out var id)) batch.Add(id);
            var made = await AssessAsync(batch, knowledge, calendar, ct);
            var (told, overtaken, mates) = await KeepAsync(made, calendar, ct);
            news.Tell(told);
            changed += told.Count;
            foreach (var id in overtaken.Concat(mates).Except(ids)) ids.Enqueue(id);
            total = Math.Max(total, ids.Count);
            progress?.Report(new ReviewProgress(total - ids.Count, total));
        }

        return changed;
    }

    /// <summary>
    /// Commits what was told of a chain and assesses it with that. Screens hear of it also when its forecast and notices stay as
    /// they are.
    /// </summary>
    /// <param name="db">What was added to it is saved.</param>
    /// <param name="transaction">Its transaction.</param>
    /// <param name="chainId">The chain.</param>
    /// <param name="ct">Gives up before the commit; after it nothing stops the answer.</param>
    public async Task CommitAsync(WearDb db, IDbContextTransaction transaction, int chainId, CancellationToken ct)
    {
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        if (await ReviewAsync([chainId], null, CancellationToken.None) == 0) news.Tell([chainId]);
    }

    /// <summary>Assesses chains as a review would, and keeps nothing.</summary>
    public async Task<IReadOnlyList<ReviewedChain>> AssessAsync(
        IReadOnlyCollection<int> chainIds, CancellationToken ct = default) =>
        await AssessAsync(chainIds, await calibrations.KnowledgeAsync(ct), await plant.CalendarAsync(ct), ct);

    private async Task<IReadOnlyList<ReviewedChain>> AssessAsync(
        IReadOnlyCollection<int> ids, Knowledge knowledge, ProductionCalendar calendar, CancellationToken ct)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        var raw = await RawChain.LoadAsync(db, ids, ct);
        var tracks = await KeptTracks.LoadAsync(db, ids, knowledge, ct);
        var now = clock.GetUtcNow();
        if (raw is [var one]) return [Review(one)];
        return await Task.Run(() => raw.AsParallel().AsOrdered().WithCancellation(ct).Select(Review).ToList(), ct);

        ReviewedChain Review(RawChain chain) =>
            ReviewedChain.Of(chain, knowledge, calendar, now, tracks.GetValueOrDefault(chain.Id));
    }

    /// <summary>
    /// Keeps what is news; chains of which something was told in the meantime are to be assessed again, and so are the others
    /// of a set of which one's state changed.
    /// </summary>
    private async Task<(List<int> Told, List<int> Overtaken, IReadOnlySet<int> Mates)> KeepAsync(
        IReadOnlyList<ReviewedChain> made, ProductionCalendar calendar, CancellationToken ct)
    {
        int[] ids = [.. made.Select(m => m.Raw.Id)];
        var now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var stamps = await RawStamp.OfAsync(db, ids, ct);
        var kept = await db.Forecasts.Where(f => ids.Contains(f.ChainId) && f.IsLatest).ToDictionaryAsync(f => f.ChainId, ct);
        var notices = (await db.Notices.Where(n => ids.Contains(n.ChainId) && (n.EndedAt == null || n.JudgedReal != null))
            .ToListAsync(ct)).ToLookup(n => n.ChainId);
        var (told, overtaken) = (new List<int>(), new List<int>());
        var (chains, lifting, mates) = await LiftingKeeping.KeepAsync(
            db, [.. made.Where(m => stamps[m.Raw.Id] == m.Raw.Stamp)], calendar.TimeZone, now, ct);
        overtaken.AddRange(made.Where(m => stamps[m.Raw.Id] != m.Raw.Stamp).Select(m => m.Raw.Id));
        foreach (var chain in await RunningGroups.CompareAsync(db, chains, ct))
        {
            if (Keep(db, chain, kept.GetValueOrDefault(chain.Raw.Id), [.. notices[chain.Raw.Id]], calendar, now)
                | lifting.Contains(chain.Raw.Id)) told.Add(chain.Raw.Id);
        }

        await KeptTracks.KeepAsync(db, [.. chains.Where(m => m.TrackMoved)], ct);
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        return (told, overtaken, mates);
    }

    private static bool Keep(
        WearDb db, ReviewedChain chain, ForecastRow? kept, IReadOnlyCollection<NoticeRow> notices, ProductionCalendar calendar,
        DateTimeOffset now)
    {
        var row = chain.ToRow(calendar, now);
        var isNews = ForecastKeeping.IsNews(kept, row, calendar.TimeZone);
        if (isNews)
        {
            kept?.IsLatest = false;
            db.Forecasts.Add(row);
        }

        return NoticeKeeping.Keep(db, chain, notices, calendar.TimeZone, now) || isNews;
    }

    private async Task<List<int>> AllAsync(CancellationToken ct)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.Chains.OrderBy(c => c.Id).Select(c => c.Id).ToListAsync(ct);
    }
}
