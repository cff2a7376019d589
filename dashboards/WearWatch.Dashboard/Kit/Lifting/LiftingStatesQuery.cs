using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Kit.Lifting;

/// <summary>Asks what is to be said of the chains that lift.</summary>
public sealed class LiftingStatesQuery(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    /// <summary>All chains that lift.</summary>
    public async Task<LiftingStatesView> AskAsync(CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        var rows = await (
            from state in db.LiftingStates.AsNoTracking()
            join chain in db.Chains on state.ChainId equals chain.Id
            join forecast in db.Forecasts.Where(f => f.IsLatest) on chain.Id equals forecast.ChainId into latest
            from forecast in latest.DefaultIfEmpty()
            select new { chain.Name, State = state, OutOfUseBy = forecast == null ? null : forecast.OutOfUseBy }).ToListAsync(ct);
        return new LiftingStatesView(
            rows.ToDictionary(r => r.Name, r => LiftingNow.Of(r.State.ToState(), r.OutOfUseBy, time)));
    }
}
