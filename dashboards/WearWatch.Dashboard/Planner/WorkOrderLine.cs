using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Planner;

/// <summary>A report on a work order, with its chain.</summary>
/// <param name="Report">What was reported, and what became of it.</param>
/// <param name="Chain">The chain of its swap; null where no swap has the id that was told.</param>
public sealed record WorkOrderLine(WorkOrderReportRow Report, ChainRow? Chain);
