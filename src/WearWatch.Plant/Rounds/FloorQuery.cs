using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Rounds;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Rounds;

/// <summary>
/// Asks for all chains as the floor knows them: a few questions to the database for the whole plant, and none to the track.
/// </summary>
public sealed class FloorQuery(IDbContextFactory<WearDb> databases, PlantSettings settings)
{
    /// <summary>The newest reading that counts is among so many rows, unless more corrections than that followed it.</summary>
    private const int RowsLookedAt = 8;

    /// <summary>All chains, in walking order.</summary>
    public async Task<IReadOnlyList<FloorChain>> AskAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var chains = await db.Chains.AsNoTracking().OrderBy(c => c.Name).ToListAsync(ct);
        var forecasts = await ForecastsAsync(db, ct);
        var readings = (await NewestAsync(db, ct)).ToLookup(r => r.ChainId);
        var changes = (await db.Events.AsNoTracking().Where(e => e.Kind == ChainEventKind.MeterReset).OrderBy(e => e.Id)
            .ToListAsync(ct)).ToLookup(e => e.ChainId);
        var doubted = await db.Notices.Where(n => n.EndedAt == null && n.Kind == NoticeKind.MeasureAgain).Select(n => n.ChainId)
            .ToHashSetAsync(ct);
        var places = await db.Walks.ToDictionaryAsync(w => w.ChainId, w => (int?)w.Place, ct);
        var oilTerms = await settings.OilTermsAsync(ct);
        var swaps = await db.PlannedSwaps.ToDictionaryAsync(s => s.ChainId, s => s.Start, ct);
        var lastAt = await LastAtAsync(db, ct);
        var oilMl = await LastOilMlAsync(db, ct);
        var linksAt = await db.LinkMeasures.Where(m => !m.Withdraws).GroupBy(m => m.ChainId)
            .Select(g => new { g.Key, At = g.Max(m => m.TakenAt) }).ToDictionaryAsync(g => g.Key, g => g.At, ct);
        var parts = (await db.PartReadings.AsNoTracking().OrderBy(p => p.Id).ToListAsync(ct)).ToLookup(p => p.ChainId);
        var mates = await RunningGroups.MatesAsync(db, ct);
        return WalkingOrder.Of(
            chains.Select(chain => Of(chain, [.. readings[chain.Id]], [.. changes[chain.Id]], doubted.Contains(chain.Id)) with
            {
                Forecast = forecasts.GetValueOrDefault(chain.Id),
                OilTerms = oilTerms,
                LastOilMl = oilMl.GetValueOrDefault(chain.Id),
                Place = places.GetValueOrDefault(chain.Id),
                PlannedSwap = swaps.GetValueOrDefault(chain.Id),
                LinksAt = linksAt.GetValueOrDefault(chain.Id),
                Mates = mates.GetValueOrDefault(chain.Id) ?? [],
                Parts = [.. StandingRows.Standing([.. parts[chain.Id]]).Select(p => p.ToReading())],
                LastAt = lastAt[chain.Id].ToDictionary(e => e.Kind, e => e.At),
            }),
            chain => chain.Row.Line, chain => $"{chain.Row.Position} {chain.Row.Name}", chain => chain.Place);
    }

    private static async Task<Dictionary<int, FloorForecast>> ForecastsAsync(WearDb db, CancellationToken ct)
    {
        var rows = await db.Forecasts.AsNoTracking().Where(f => f.IsLatest).ToListAsync(ct);
        return rows.ToDictionary(f => f.ChainId, Needed);
    }

    private static FloorForecast Needed(ForecastRow row)
    {
        var forecast = row.ToForecast();
        return new FloorForecast
        {
            ElongationPct = row.ElongationPct,
            ElongationSdPct = row.ElongationSdPct,
            RatePctPer1000H = row.RatePctPer1000H,
            LogRateSd = row.LogRateSd,
            HoursAtLastReading = row.HoursAtLastReading,
            HoursNow = row.HoursNow,
            LimitPct = row.LimitPct,
            EarlyDate = row.EarlyDate,
            LimitedBy = row.Sooner?.Cause,
            Condition = row.Condition,
            EarlyHours = forecast.EarlyHours,
            MiddleHours = forecast.MiddleHours,
            NextOilingAt = row.NextOilingAt,
            OutOfUseBy = row.OutOfUseBy,
            ShortenFrom = row.ShortenEarlyDate,
            ShortenPitches = row.ShortenPitches,
            TensionFrom = row.TensionFrom,
        };
    }

    private static Task<List<ReadingRow>> NewestAsync(WearDb db, CancellationToken ct) => (
        from chain in db.Chains
        from reading in db.Readings.Where(r => r.ChainId == chain.Id).OrderByDescending(r => r.Id).Take(RowsLookedAt)
        orderby reading.Id
        select reading).AsNoTracking().ToListAsync(ct);

    /// <summary>When what happened last to each chain, by what it was.</summary>
    private static async Task<ILookup<int, (ChainEventKind Kind, DateTimeOffset At)>> LastAtAsync(WearDb db, CancellationToken ct)
    {
        var last = await db.Events
            .Where(e => e.At != null && !e.Withdraws && !db.Events.Any(later => later.CorrectsId == e.Id))
            .Where(e => e.OilAmountMl != 0) // a stroke of which nothing arrived oils nothing
            .GroupBy(e => new { e.ChainId, e.Kind })
            .Select(there => new { there.Key.ChainId, there.Key.Kind, At = there.Max(e => e.At) })
            .ToListAsync(ct);
        return last.ToLookup(e => e.ChainId, e => (e.Kind, e.At!.Value));
    }

    /// <summary>How much oil each chain was last given by hand, in millilitres, where that is recorded.</summary>
    private static Task<Dictionary<int, double?>> LastOilMlAsync(WearDb db, CancellationToken ct) => (
        from chain in db.Chains
        from oiling in db.Events
            .Where(e => e.ChainId == chain.Id && e.Kind == ChainEventKind.Oiling && e.OilAmountMl > 0 && !e.Withdraws)
            .Where(e => e.OilMethod == null || e.OilMethod == OilMethod.Hand)
            .Where(e => !db.Events.Any(later => later.CorrectsId == e.Id))
            .OrderByDescending(e => e.At).ThenByDescending(e => e.Id).Take(1)
        select new { oiling.ChainId, oiling.OilAmountMl }).ToDictionaryAsync(o => o.ChainId, o => o.OilAmountMl, ct);

    private static FloorChain Of(
        ChainRow chain, IReadOnlyList<ReadingRow> newest, IReadOnlyList<EventRow> changes, bool trackDoubts)
    {
        var standing = StandingRows.Standing(newest);
        var counted = standing.LastOrDefault(r => r.CounterH is not null);
        // A counter that was changed since then counts from what it showed after the change.
        var changed = StandingRows.Standing(changes)
            .LastOrDefault(e => e.CounterAfterH is not null && e.CounterAfterH != e.CounterBeforeH
            && (counted is null || e.At > counted.TakenAt));
        var last = standing.Count > 0 ? standing[^1] : null;
        return new FloorChain
        {
            Row = chain,
            Last = last,
            // A reading that was held back long ago and measured again since asks for nothing.
            LastDoesNotFit = trackDoubts || StandingRows.Waiting(newest).Any(w => w.Id > (last?.Id ?? 0))
                || (last is not null && !IsPossible(chain, last)),
            LastCounterH = changed?.CounterAfterH ?? counted?.CounterH,
        };
    }

    private static bool IsPossible(ChainRow chain, ReadingRow reading) =>
        Gauge.Measure(
            chain.PitchMm, reading.Pitches, reading.LengthMm, reading.Tool, reading.TemperatureC) is GaugeOutcome.Measured;
}
