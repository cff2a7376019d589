using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Overview.Notices;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Plant.WorkOrders;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Overview.OneChain;

/// <summary>Asks for all that a chain's page shows.</summary>
public sealed class OneChainQuery(
    IDbContextFactory<WearDb> databases, ChainReader reader, PlantSettings settings, PlantClock clock)
{
    private const int ForecastsShown = 60;
    private const int NoticesShown = 20;

    /// <summary>The page of a chain; null when no chain has the name.</summary>
    public async Task<ChainView?> AskAsync(string name, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.Chains.AsNoTracking().FirstOrDefaultAsync(c => c.Name == name, ct) is not { } row) return null;
        if (await reader.ReviewAsync(row.Id, ct) is not { } reviewed) return null;
        var readings = await db.Readings.AsNoTracking().Where(r => r.ChainId == row.Id).OrderBy(r => r.Id).ToListAsync(ct);
        var forecasts = await db.Forecasts.AsNoTracking().Where(f => f.ChainId == row.Id)
            .OrderByDescending(f => f.Id).Take(ForecastsShown).ToListAsync(ct);
        forecasts.Reverse();
        var time = await clock.NowAsync(ct);
        var facts = new ChainFacts
        {
            Row = row,
            Assessment = reviewed.Assessment,
            Links = reviewed.Links,
            LinkMeasures = reviewed.Raw.LinkMeasureRows,
            Parts = reviewed.Parts,
            First = reviewed.First,
            PartReadings = reviewed.Raw.PartRows,
            Standing = StandingRows.Standing(readings),
            Waiting = StandingRows.Waiting(readings),
            Events = await db.StandingEventsAsync(row.Id, ct),
            Forecasts = forecasts,
            Notices = await NoticesAsync(db, row.Id, time, ct),
            Swap = await db.PlannedSwaps.AsNoTracking().FirstOrDefaultAsync(s => s.ChainId == row.Id, ct),
            Order = (await db.PlannedOrdersAsync(ct)).GetValueOrDefault(row.Id),
            Calendar = await settings.CalendarAsync(ct),
            OilTerms = await settings.OilTermsAsync(ct),
        };
        return ChainView.Of(facts, time);
    }

    private static async Task<IReadOnlyList<NoticeLine>> NoticesAsync(
        WearDb db, int chainId, PlantTime time, CancellationToken ct)
    {
        var lines = NoticeLine.Of(db, db.Notices.AsNoTracking().Where(n => n.ChainId == chainId), time.Now);
        return await NoticeLine.WithStepsAsync(db, await lines
            .OrderBy(n => n.EndedAt != null).ThenByDescending(n => n.RaisedAt).Take(NoticesShown).ToListAsync(ct), ct);
    }
}
