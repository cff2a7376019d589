using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.WorkOrders;

/// <summary>Reads how work orders stand: from the reports that count, and from nothing else.</summary>
public static class WorkOrderBook
{
    /// <summary>The work orders of the swaps that are planned and not done yet, by their chains.</summary>
    public static async Task<IReadOnlyDictionary<int, WorkOrder>> PlannedOrdersAsync(this WearDb db, CancellationToken ct)
    {
        var orders = await db.WorkOrdersAsync(db.PlannedSwaps, ct);
        var ids = orders.Keys.ToArray();
        return await db.PlannedSwaps.Where(s => ids.Contains(s.Id)).ToDictionaryAsync(s => s.ChainId, s => orders[s.Id], ct);
    }

    /// <summary>The work orders of some swaps, by their ids.</summary>
    public static async Task<IReadOnlyDictionary<long, WorkOrder>> WorkOrdersAsync(
        this WearDb db, IQueryable<SwapRow> swaps, CancellationToken ct)
    {
        var reports = await db.WorkOrderReports.AsNoTracking()
            .Where(r => r.Standing == WorkOrderStanding.Used || r.Standing == WorkOrderStanding.TheirsTaken)
            .Where(r => swaps.Any(s => s.Id == r.SwapId)).OrderBy(r => r.Id).ToListAsync(ct);
        return reports.GroupBy(r => r.SwapId!.Value).ToDictionary(g => g.Key, g => WorkOrder.Of([.. g])!);
    }
}
