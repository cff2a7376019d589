using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Browser.Tests;

/// <summary>Reports on work orders, for the list of their page.</summary>
internal static class SortedWorkOrders
{
    public static async Task AddAsync(WearDb db, DateTimeOffset now)
    {
        var swaps = db.Swaps.OrderBy(s => s.Id).Take(3).Select(s => s.Id).ToArray();
        db.WorkOrderReports.AddRange(Enumerable.Range(0, 3).Select(i => new WorkOrderReportRow
        {
            Key = $"report {i}",
            Fingerprint = $"{i}",
            Swap = $"swap-{swaps[i]}",
            SwapId = swaps[i],
            Number = $"{4720 - i}",
            State = (WorkOrderState)(1 + i),
            DoneAt = now.AddDays(-20 + i),
            HoursWorked = 3 + i,
            Material = [new MaterialUsed($"part {2 - i}", 1)],
            ToldBy = "orders",
            ReceivedAt = now.AddDays(-i),
            Standing = (WorkOrderStanding)(1 + (i + 1) % 3),
        }));
        await db.SaveChangesAsync();
    }
}
