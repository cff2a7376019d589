using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Lubrication;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Technician.Oiling;

/// <summary>What is known of one chain's oil.</summary>
/// <param name="Card">Its card with what its position has shown.</param>
/// <param name="Advice">What the trade's tables say.</param>
/// <param name="Due">When it is due.</param>
/// <param name="Effect">
/// What became of its wear after the last change of its oiling; null where nothing changed or nothing can be said yet.
/// </param>
/// <param name="Time">Now.</param>
public sealed record AdviceView(ChainCard Card, OilAdvice Advice, OilingDue Due, OilEffectWatch? Effect, PlantTime Time);

/// <summary>Asks for one chain's oil.</summary>
public sealed class AdviceQuery(IDbContextFactory<WearDb> databases, ChainReview review, PlantSettings settings, PlantClock clock)
{
    /// <summary>The chain of a name; null when there is none.</summary>
    public async Task<AdviceView?> AskAsync(string name, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.Chains.Where(c => c.Name == name).Select(c => (int?)c.Id).FirstOrDefaultAsync(ct) is not { } id) return null;
        if (await review.AssessAsync([id], ct) is not [var chain]) return null;
        var calendar = await settings.CalendarAsync(ct);
        return new AdviceView(
            chain.Seen, OilAdvice.For(chain.Seen), chain.Oiling,
            OilEffectWatch.Of(chain.Assessment.History.Current, chain.Raw.Readings, chain.Raw.Events, calendar),
            await clock.NowAsync(ct));
    }
}
