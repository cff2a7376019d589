using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Engineer.Report;

/// <summary>What a plant manager has to know of a month, read in three minutes.</summary>
/// <param name="Month">Its first day.</param>
/// <param name="Plant">The plant's name.</param>
/// <param name="Time">When it was written, in the plant's time.</param>
/// <param name="Parts">Its parts, the shortest first.</param>
public sealed record MonthReport(DateOnly Month, string Plant, PlantTime Time, IReadOnlyList<ReportPart> Parts)
{
    /// <summary>What stands against the use of each chain that lifts: told wherever one is named.</summary>
    public LiftingStatesView Lifting { get; init; } = LiftingStatesView.None;

    /// <summary>Such as <c>October 2026</c>.</summary>
    public string MonthName => Month.ToString("MMMM yyyy", System.Globalization.CultureInfo.CurrentCulture);

    /// <summary>What stands on top.</summary>
    public string Title => T[$"Chains in {MonthName}"];

    /// <summary>The line under it.</summary>
    public string Under => (Plant.Length > 0 ? Plant + ", " : "") + (IsOver
        ? T[$"written on {Time.Today}"]
        : T[$"written on {Time.Today}; the month is not over"]);

    /// <summary>Whether the month is over.</summary>
    public bool IsOver => Month.AddMonths(1) <= Time.Today;
}
