using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Overview.Notices;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.Glance;

/// <summary>Asks the plant's memory for the plant at a glance.</summary>
public sealed class GlanceQuery(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    private const int NoticesShown = 6;
    private const int ArrivalsShown = 8;

    public async Task<GlanceView> AskAsync(CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        var chains = await (
            from chain in db.Chains
            join forecast in db.Forecasts.Where(f => f.IsLatest) on chain.Id equals forecast.ChainId into latest
            from forecast in latest.DefaultIfEmpty()
            select new ChainNow(
                chain.Name, chain.Line,
                ConditionWords.Of(
                    forecast == null ? Condition.NotKnown : forecast.Condition,
                    chain.Family.Lifts(chain.Lifts, chain.NotLiftingReason != "")),
                forecast == null ? null : forecast.EarlyDate, forecast == null ? null : forecast.NextOilingAt,
                db.PlannedSwaps.Any(s => s.ChainId == chain.Id))).ToListAsync(ct);
        var open = db.Notices.Where(n => n.EndedAt == null);
        var notices = await NoticeLine.InOrder(NoticeLine.Of(db, open, time.Now)).Take(NoticesShown).ToListAsync(ct);
        var counted = new NoticeCounts(await AttentionAsync(db, time.Now, ct));
        var ordered = await NoticeLine.WithOrdersAsync(db, notices, ct);
        return GlanceView.Of(chains, ordered, counted, await ArrivalsAsync(db, ct), time);
    }

    private static Task<List<NoticeAttention>> AttentionAsync(WearDb db, DateTimeOffset now, CancellationToken ct) => (
        from notice in db.Notices.Where(n => n.EndedAt == null)
        join chain in db.Chains on notice.ChainId equals chain.Id
        select new NoticeAttention(
            notice.Kind, notice.Urgent, chain.Family.Lifts(chain.Lifts, chain.NotLiftingReason != ""))
        {
            IsAcknowledged = notice.Acknowledged,
            IsSnoozed = notice.SnoozedUntil != null && notice.SnoozedUntil > now,
            SwapIsPlanned = db.PlannedSwaps.Any(s => s.ChainId == chain.Id),
        }).ToListAsync(ct);

    private static async Task<List<LatestReading>> ArrivalsAsync(WearDb db, CancellationToken ct) => await (
        from reading in db.Readings
        join chain in db.Chains on reading.ChainId equals chain.Id
        where !reading.Withdraws && !db.Readings.Any(other => other.ChainId == reading.ChainId && other.Id > reading.Id)
        orderby reading.TakenAt descending, reading.Id descending
        select new LatestReading(
            chain.Name, chain.Line,
            chain.PitchMm > 0 && reading.Pitches > 0 ? 100 * (reading.LengthMm / (reading.Pitches * chain.PitchMm) - 1) : null,
            reading.Standing == ReadingStanding.Waiting, reading.ToldBy, reading.TakenAt ?? reading.ReceivedAt))
        .Take(ArrivalsShown).ToListAsync(ct);
}
