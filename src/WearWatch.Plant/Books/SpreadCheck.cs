using Microsoft.EntityFrameworkCore;
using WearWatch.Lives;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Books;

/// <summary>
/// Looks every night whether the forecasts of the plant have held; gives them another spread, and a person a notice, when they
/// have not.
/// </summary>
public sealed class SpreadCheck(IDbContextFactory<WearDb> database, LifeBook book, KeptForecasts record, TimeProvider clock)
{
    /// <summary>The share of life at which forecasts are looked at: one for each life.</summary>
    public const double AtShare = 0.5;

    /// <summary>Looks at the newest lives that ended under a forecast.</summary>
    /// <returns>Whether forecasts have another spread now.</returns>
    public async Task<bool> RunOnceAsync(CancellationToken ct = default)
    {
        var ended = (await record.ReadAsync(await book.ReadAsync(ct), ct))
            .Where(f => f.AtShare == AtShare && f.EndedAt is not null).OrderBy(f => f.EndedAt).Select(f => f.AsMade);
        await using var db = await database.CreateDbContextAsync(ct);
        var inUse = (await db.Spreads.AsNoTracking().OrderByDescending(s => s.Id).FirstOrDefaultAsync(ct))?.ToSpread()
            ?? ForecastSpread.AsMade;
        if (SpreadCalibration.Of(ended, inUse) is not SpreadOutcome.Drifted drifted || drifted.Spread == inUse) return false;
        db.Spreads.Add(new SpreadRow
        {
            MadeAt = clock.GetUtcNow(),
            Lives = drifted.Held.Of,
            Held = drifted.Held.Hits,
            EarlyExponent = drifted.Spread.Early,
            LateExponent = drifted.Spread.Late,
        });
        await TellAsync(db, drifted, ct);
        await db.SaveChangesAsync(ct);
        return true;
    }

    private async Task TellAsync(WearDb db, SpreadOutcome.Drifted drifted, CancellationToken ct)
    {
        var open = await db.PlantNotices
            .SingleOrDefaultAsync(n => n.Kind == PlantNoticeKind.ForecastsDrifted && n.EndedAt == null, ct);
        if (open is null)
        {
            db.PlantNotices.Add(open = new PlantNoticeRow
            {
                Kind = PlantNoticeKind.ForecastsDrifted,
                Why = Phrase.None,
                WhatToDo = Phrase.None,
                RaisedAt = clock.GetUtcNow(),
            });
        }

        var held = drifted.Held;
        var (early, late) = (Words(drifted.Spread.Early), Words(drifted.Spread.Late));
        open.Why = drifted.TooNarrow
            ? Phrase.Of($"Of the last {held.Of} lives {held.Hits} ended within the 90 % interval of their forecast at half of "
                + $"life: "
                + $"too few for chance. From now on the early side is {early}, the late side {late}.")
            : $"Of the last {held.Of} lives {held.Hits} ended within the 90 % interval of their forecast at half of life: "
                + $"too many for chance. From now on the early side is {early}, the late side {late}.";
        open.WhatToDo = drifted.TooNarrow
            ? Phrase.Of($"Look for what has changed: duties in the master data, lubrication, dust, tools and who measures. "
                + $"Dates may have moved; check the swap plan.")
            : $"Nothing to mend: forecasts were surer than they said. Dates may have moved; check the swap plan.";
    }

    private static Phrase Words(double exponent) => exponent switch
    {
        > 1.005 => $"wider by {100 * (exponent - 1):0} % on the logarithm of the hours left",
        < 0.995 => $"narrower by {100 * (1 - exponent):0} % on the logarithm of the hours left",
        _ => $"as it was made",
    };
}
