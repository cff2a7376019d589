using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>Looks back: who decided what, and what became of each stop.</summary>
public sealed class PlanHistory(IDbContextFactory<WearDb> databases, TimeProvider clock)
{
    /// <summary>So many decisions and stops are shown; the newest matter.</summary>
    public const int MostShown = 100;

    /// <summary>The last decisions, the newest first, each with the one whose place it took.</summary>
    public async Task<IReadOnlyList<PlanDecision>> DecisionsAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var rows = await (from swap in db.Swaps
                          join chain in db.Chains on swap.ChainId equals chain.Id
                          orderby swap.Id descending
                          select new { swap, chain.Name }).AsNoTracking().Take(MostShown).ToListAsync(ct);
        var ids = rows.Select(r => r.swap.ChainId).Distinct().ToArray();
        var all = (await db.Swaps.AsNoTracking().Where(s => ids.Contains(s.ChainId)).OrderBy(s => s.Id).ToListAsync(ct))
            .ToLookup(s => s.ChainId);
        return [.. rows.Select(r => new PlanDecision(
            r.Name, r.swap,
            all[r.swap.ChainId].LastOrDefault(s => s.Id < r.swap.Id && s.Outcome == SwapEnd.Replaced)?.Start))];
    }

    /// <summary>The stops that have begun, the newest first, with what was planned and what was done.</summary>
    public async Task<IReadOnlyList<StopResult>> StopsAsync(CancellationToken ct)
    {
        var now = clock.GetUtcNow();
        await using var db = await databases.CreateDbContextAsync(ct);
        var swaps = await (from swap in db.Swaps
                           join chain in db.Chains on swap.ChainId equals chain.Id
                           where swap.Start != null && swap.Start <= now && swap.Outcome != SwapEnd.Replaced
                           orderby swap.Start descending, chain.Name
                           select new { swap, chain.Name, chain.Line }).AsNoTracking().ToListAsync(ct);
        return [.. swaps.GroupBy(s => (s.swap.WindowId, s.swap.Start, s.Line)).Take(MostShown)
            .Select(g => new StopResult(g.Key.Line, g.Key.Start!.Value, [.. g.Select(s => (s.Name, s.swap))]))];
    }
}
