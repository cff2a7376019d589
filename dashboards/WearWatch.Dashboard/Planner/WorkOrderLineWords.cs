using System.Diagnostics;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Settings;
using WearWatch.Plant.WorkOrders;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Planner;

/// <summary>Reports on work orders in words.</summary>
public static class WorkOrderLineWords
{
    /// <summary>What became of one.</summary>
    public static string Of(WorkOrderStanding standing) => standing switch
    {
        WorkOrderStanding.Received => T["not worked off yet"],
        WorkOrderStanding.Used => T["used"],
        WorkOrderStanding.InConflict => T["to be settled"],
        WorkOrderStanding.TheirsTaken => T["theirs taken"],
        WorkOrderStanding.OursKept => T["ours kept"],
        _ => throw new UnreachableException(),
    };

    /// <summary>What was used.</summary>
    public static string Material(WorkOrderReportRow report) =>
        string.Join("; ", (report.Material ?? []).Select(m => $"{Show.Count(m.Quantity)} {m.Part}"));

    /// <summary>All that a report says.</summary>
    public static string Said(WorkOrderReportRow report, PlantTime time) => string.Join(" · ", new[]
    {
        T[WorkOrderWords.Of(new WorkOrder(report.Number, report.State, report.ReceivedAt))],
        report.DoneAt is { } done ? T[$"done on {time.Moment(done)}"] : "",
        report.HoursWorked is { } hours ? T[$"{PackageWords.Hours(hours)} hours of work"] : "",
        Material(report),
        report.Note,
    }.Where(part => part.Length > 0));

    /// <summary>What is done now that a conflict is settled.</summary>
    public static Phrase Settled(WorkOrderLine line, bool takesTheirs)
    {
        if (!takesTheirs) return $"{line.Report.Swap}: what stands here is kept.";
        return line is { Chain.HoldsLoad: true, Report.State: WorkOrderState.Done }
            ? Phrase.Of($"{line.Report.Swap}: the report is taken. The chain holds a load: before anything is lifted, its "
                + $"certificate is entered and a competent person examines it.")
            : $"{line.Report.Swap}: the report is taken.";
    }
}
