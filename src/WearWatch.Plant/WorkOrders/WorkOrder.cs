using WearWatch.Storage.Rows;

namespace WearWatch.Plant.WorkOrders;

/// <summary>The work order of a planned swap in another system, as far as it has been reported.</summary>
/// <param name="Number">Its number there; empty while none was told.</param>
/// <param name="State">How far it is.</param>
/// <param name="At">When that was reported.</param>
public sealed record WorkOrder(string Number, WorkOrderState State, DateTimeOffset At)
{
    /// <summary>What the reports that count come to, from the first to the last; null without any.</summary>
    public static WorkOrder? Of(IReadOnlyList<WorkOrderReportRow> reports) => reports is [.., var last]
        ? new(reports.LastOrDefault(r => r.Number.Length > 0)?.Number ?? "", last.State, last.ReceivedAt)
        : null;
}
