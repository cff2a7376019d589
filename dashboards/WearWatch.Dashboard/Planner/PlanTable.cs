using System.Globalization;
using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Planner;

/// <summary>A list that leaves the house as CSV or as a sheet: a head and rows of texts, numbers and dates.</summary>
/// <param name="Name">Name of the file and of the sheet.</param>
/// <param name="Head">The columns.</param>
/// <param name="Rows">The rows; a cell is a text, a whole or broken number, a date, or null.</param>
public sealed record PlanTable(string Name, IReadOnlyList<string> Head, IReadOnlyList<IReadOnlyList<object?>> Rows)
{
    /// <summary>The swaps of a plan.</summary>
    public static PlanTable Swaps(KeptPlanView view) => new(
        "swaps", ["chain", "line", "position", "chain_type", "pitches", "shutdown_start", "shutdown_end", "limit_early",
            "limit_late", "probability_past_limit", "placing", "note"],
        [.. view.Plan.Placements.Select(p =>
        {
            var (face, swap) = (view.Picture.Faces[p.Chain], view.Picture.Swaps.GetValueOrDefault(p.Chain));
            return (IReadOnlyList<object?>)[
                p.Chain, face.Row.Line, face.Row.Position, face.Row.ChainType, face.Row.Pitches, p.Window?.Start, p.Window?.End,
                    face.Early, face.Late,
                Math.Round(p.Own.ProbabilityPast, 3), swap?.Placing.ToString() ?? "", swap?.Note ?? ""];
        })]);

    /// <summary>The orders of a plan, a row for each part and month.</summary>
    public static PlanTable Orders(KeptPlanView view) => new(
        "orders", ["part", "unit", "on_record", "order", "latest_order", "needed_by", "month", "planned", "expected",
            "low_to_month_end", "high_to_month_end", "available", "expected_shortage"],
        [.. from order in view.Orders
            from month in order.Months
            select (IReadOnlyList<object?>)[
                order.Spare.Part.ToString(), order.Spare.Part.Unit, order.OnRecord ? "yes" : "no", order.Quantity,
                    order.LatestOrder, order.NeededBy,
                month.Month.ToString("yyyy-MM", CultureInfo.InvariantCulture), month.Planned, Math.Round(month.Expected, 2),
                    month.Low, month.High, month.Available, Math.Round(month.ExpectedShortage, 2)]]);

    /// <summary>A cell as CSV writes it.</summary>
    public static string Text(object? cell) => cell switch
    {
        null => "",
        DateTimeOffset at => at.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture),
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
        _ => cell.ToString() ?? "",
    };
}
