using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Lifting;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Lifting;

/// <summary>Asks for a lifting chain's page.</summary>
public sealed class LiftingQuery(
    IDbContextFactory<WearDb> databases, LiftingReader reader, PlantSettings settings, PlantClock clock)
{
    /// <summary>The page; null when no chain of the name lifts or holds a load.</summary>
    public async Task<LiftingView?> AskAsync(string name, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.Chains.AsNoTracking().SingleOrDefaultAsync(c => c.Name == name, ct) is not { } chain) return null;
        if (!chain.ToCard().HoldsLoad || await reader.ReadAsync(chain.Id, ct) is not { } reading) return null;
        var region = (await settings.CurrentAsync(ct)).LawRegion;
        var cards = await db.LiftingCards.AsNoTracking().Where(c => c.ChainId == chain.Id).OrderByDescending(c => c.Id)
            .ToListAsync(ct);
        var reports = await db.Examinations.AsNoTracking().Where(e => e.ChainId == chain.Id).OrderBy(e => e.Id).ToListAsync(ct);
        return new LiftingView
        {
            Chain = chain,
            State = reading.State,
            Stops = reading.Stops,
            Competent = reading.Competent,
            Cards = cards,
            Papers = await db.LiftingFiles.Where(f => f.ChainId == chain.Id).OrderByDescending(f => f.Id)
                .Select(f => new LiftingPaper(f.Id, f.Kind, f.Name, f.ToldBy, f.ReceivedAt)).ToListAsync(ct),
            Examinations = [.. StandingRows.Standing(reports).Reverse()],
            Steps = await db.LiftingSteps.AsNoTracking().Where(s => s.ChainId == chain.Id).OrderByDescending(s => s.Id)
                .ToListAsync(ct),
            Interval = LiftingDueQuery.IntervalOf(cards.FirstOrDefault(), region),
            OutOfUseBy = await db.Forecasts.Where(f => f.ChainId == chain.Id && f.IsLatest).Select(f => f.OutOfUseBy)
                .SingleOrDefaultAsync(ct),
            Region = region,
            Time = await clock.NowAsync(ct),
        };
    }
}
