using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Planner;

/// <summary>Asks for what other systems reported of work orders.</summary>
public sealed class WorkOrderQuery(IDbContextFactory<WearDb> databases)
{
    /// <summary>So many are read on a page.</summary>
    private const int OnAPage = 500;

    /// <summary>The reports, the newest first.</summary>
    /// <param name="standing">Only those that stand so; null for all.</param>
    /// <param name="chain">Only those on swaps of this chain; null for all.</param>
    /// <param name="ct">Ends it.</param>
    /// <param name="most">How many at most.</param>
    public async Task<IReadOnlyList<WorkOrderLine>> AskAsync(
        WorkOrderStanding? standing, string? chain, CancellationToken ct, int most = OnAPage)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var reports =
            from report in db.WorkOrderReports.AsNoTracking()
            join swap in db.Swaps on report.SwapId equals swap.Id into swaps
            from swap in swaps.DefaultIfEmpty()
            join known in db.Chains on swap.ChainId equals known.Id into chains
            from known in chains.DefaultIfEmpty()
            where standing == null || report.Standing == standing
            where chain == null || known.Name == chain
            orderby report.Id descending
            select new { report, known };
        return [.. (await reports.Take(most).ToListAsync(ct)).Select(r => new WorkOrderLine(r.report, r.known))];
    }
}
