namespace WearWatch.Dashboard.Planner;

/// <summary>A line on one day of the board, or after the horizon.</summary>
/// <param name="Line">The line.</param>
/// <param name="Name">The day in words.</param>
/// <param name="WindowId">The shutdown's id; null for none on that day, or for after the horizon.</param>
/// <param name="IsPlace">Whether a swap can stand here.</param>
/// <param name="Cards">The swaps that do.</param>
/// <param name="Load">The crew's work against its hours, where there is any.</param>
public sealed record PlanCell(
    string Line, string Name, string? WindowId, bool IsPlace, IReadOnlyList<PlanCard> Cards, CellLoad? Load);

/// <summary>The work of a crew's turn against its hours.</summary>
/// <param name="Text">Such as 6 / 16 h.</param>
/// <param name="Over">Whether it is more than the hours.</param>
public sealed record CellLoad(string Text, bool Over);

/// <summary>A line of the board.</summary>
/// <param name="Name">The line.</param>
/// <param name="Cells">First what is not in the horizon, then its days in order.</param>
public sealed record PlanLine(string Name, IReadOnlyList<PlanCell> Cells);
