using Microsoft.EntityFrameworkCore;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;

namespace WearWatch.Plant.Lifting;

/// <summary>Concludes a lifting chain's state from all that was told, and keeps nothing.</summary>
public sealed class LiftingReader(IDbContextFactory<WearDb> database, ChainReview review, PlantClock plantClock)
{
    /// <summary>What is concluded of a chain; null when it does not hold a load.</summary>
    public async Task<LiftingReading?> ReadAsync(int chainId, CancellationToken ct)
    {
        var time = await plantClock.NowAsync(ct);
        if ((await review.AssessAsync([chainId], ct)).SingleOrDefault() is not { Raw.Card.HoldsLoad: true } chain) return null;
        await using var db = await database.CreateDbContextAsync(ct);
        var facts = (await LiftingRows.LoadAsync(db, [chainId], time.Zone, ct)).FactsOf(chain);
        var appointments = await LiftingChains.AppointmentsAsync(db, time.Zone, ct);
        return new LiftingReading(
            LiftingState.Of(facts, time.Now),
            StopFinding.Standing(facts.Card, facts.Found, facts.Steps, facts.ReplacedAt),
            [.. appointments.Where(a => a.Covers(a.Person, facts.Card, time.Today)).Select(a => a.Person).Distinct()]);
    }
}
