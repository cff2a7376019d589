using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Lifting;

/// <summary>Asks for the register's list of lifting chains.</summary>
public sealed class LiftingDueQuery(IDbContextFactory<WearDb> databases, PlantSettings settings, PlantClock clock)
{
    /// <summary>All of them, worst first, then by the day on which the examination is due.</summary>
    public async Task<LiftingDueView> AskAsync(CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        var region = (await settings.CurrentAsync(ct)).LawRegion;
        await using var db = await databases.CreateDbContextAsync(ct);
        var rows = await (
            from state in db.LiftingStates.AsNoTracking()
            join chain in db.Chains.AsNoTracking() on state.ChainId equals chain.Id
            join forecast in db.Forecasts.Where(f => f.IsLatest) on chain.Id equals forecast.ChainId into latest
            from forecast in latest.DefaultIfEmpty()
            select new { Chain = chain, State = state, OutOfUseBy = forecast == null ? null : forecast.OutOfUseBy })
            .ToListAsync(ct);
        var cards = (await db.LiftingCards.AsNoTracking().OrderBy(c => c.Id).ToListAsync(ct)).GroupBy(c => c.ChainId)
            .ToDictionary(g => g.Key, g => g.Last());
        return new LiftingDueView(
            [
                .. rows.Select(r => Of(r.Chain, cards.GetValueOrDefault(r.Chain.Id), r.State.ToState(), r.OutOfUseBy))
                    .OrderByDescending(l => l.Now.Verdict).ThenBy(l => l.State.ExaminationDue ?? DateOnly.MinValue)
                    .ThenBy(l => l.Chain.Name, StringComparer.Ordinal),
            ],
            region, time);

        LiftingDueLine Of(ChainRow chain, LiftingCardRow? card, LiftingState state, DateTimeOffset? outOfUseBy) => new(
            chain, card, state, LiftingNow.Of(state, outOfUseBy, time), IntervalOf(card, region));
    }

    /// <summary>The interval of a chain's thorough examination.</summary>
    public static ExaminationInterval IntervalOf(LiftingCardRow? card, LawRegion plants) =>
        card?.ToEntry().Interval(plants)
        ?? ExaminationInterval.Of(new IntervalCase(plants, LiftingUse.Hoist), set: null, schemeOnFile: false);
}
