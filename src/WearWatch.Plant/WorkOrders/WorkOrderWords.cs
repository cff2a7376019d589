using System.Diagnostics;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.WorkOrders;

/// <summary>Work orders in words.</summary>
public static class WorkOrderWords
{
    /// <summary>How far one is.</summary>
    public static Phrase Of(WorkOrderState state) => state switch
    {
        WorkOrderState.Open => $"open",
        WorkOrderState.Released => $"released",
        WorkOrderState.InWork => $"in work",
        WorkOrderState.Done => $"done",
        WorkOrderState.Cancelled => $"cancelled",
        _ => throw new UnreachableException(),
    };

    /// <summary>Its number and how far it is.</summary>
    public static Phrase Of(WorkOrder order) => order.Number.Length > 0
        ? Phrase.Of($"order {order.Number}: {Of(order.State)}")
        : $"order: {Of(order.State)}";
}
