using System.Globalization;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Planning.Plans;
using WearWatch.Plant.Planning;
using WearWatch.Plant.WorkOrders;

namespace WearWatch.Dashboard.Planner;

/// <summary>A list that leaves the house as CSV or as a sheet: a head and rows of texts, numbers and dates.</summary>
/// <param name="Name">Name of the file and of the sheet.</param>
/// <param name="Head">The columns.</param>
/// <param name="Rows">The rows; a cell is a text, a whole or broken number, a date, or null.</param>
public sealed record PlanTable(string Name, IReadOnlyList<string> Head, IReadOnlyList<IReadOnlyList<object?>> Rows)
{
    /// <summary>
    /// The swaps of a plan: first the chains that are out of use, then the others; last those that hold a load and are not
    /// planned.
    /// </summary>
    /// <param name="view">The plan.</param>
    /// <param name="lifting">What stands against the use of the chains that lift.</param>
    public static PlanTable Swaps(KeptPlanView view, LiftingStatesView lifting) => new(
        "swaps", ["chain", "line", "position", "chain_type", "pitches", "shutdown_start", "shutdown_end", "limit_early",
            "limit_late", "probability_past_limit", "placing", "note", "out_of_use_by", "out_of_use_from",
            "holds_load", "lifting", "limited_by", "id"],
        [
            .. view.Plan.Placements.OrderBy(p => p.OutOfUseFrom is null).Select(p => SwapOf(view, p, lifting)),
            .. view.Picture.Input.LoadWarnings.Where(load => !view.Picture.Faces.ContainsKey(load.Chain)).Select(load =>
                (IReadOnlyList<object?>)[load.Chain, load.Line, "", "", null, null, null, null, null, null, "", "",
                    load.OutOfUseBy, null, SaidOf(view, load.Chain), Said(lifting[load.Chain]), "", null]),
        ]);

    private static IReadOnlyList<object?> SwapOf(
        KeptPlanView view, Placement placement, LiftingStatesView lifting)
    {
        var (chain, window) = (placement.Chain, placement.Window);
        var (face, swap) = (view.Picture.Faces[chain], view.Picture.Swaps.GetValueOrDefault(chain));
        return [chain, face.Row.Line, face.Row.Position, face.Row.ChainType,
            face.Row.Pitches, window?.Start, window?.End, face.Early, face.Late, Math.Round(placement.Own.ProbabilityPast, 3),
            swap?.Placing.ToString() ?? "", swap?.Note ?? "", view.Picture.Input.Tasks.Single(t => t.Chain == chain).OutOfUseBy,
            placement.OutOfUseFrom, SaidOf(view, chain), Said(lifting[chain]), face.LimitedBy.IsEmpty ? "" : T[face.LimitedBy],
            swap is null ? null : SwapId.Of(swap.Id)];
    }

    /// <summary>What stands against the use of a chain that lifts; nothing for another.</summary>
    private static string Said(LiftingNow? now) =>
        now is null ? "" : string.Join(" ", LiftingWords.Lines(now).Append(T[Caution.LiftingInBrief]));

    private static string SaidOf(KeptPlanView view, string chain) =>
        string.Join(" ", view.Plan.Remarks.Where(r => r.IsOfLoad && r.Subject == chain).Select(r => T[r.Why]));

    /// <summary>The orders of a plan, a row for each part and month.</summary>
    public static PlanTable Orders(KeptPlanView view) => new(
        "orders", ["part", "unit", "on_record", "order", "latest_order", "needed_by", "month", "planned", "expected",
            "low_to_month_end", "high_to_month_end", "available", "expected_shortage", "kits",
            "rejoins"],
        [.. from order in view.Orders
            from month in order.Months
            select (IReadOnlyList<object?>)[
                order.Spare.Part.ToString(), order.Spare.Part.Unit.ToString(), order.OnRecord ? "yes" : "no", order.Quantity,
                    order.LatestOrder, order.NeededBy,
                month.Month.ToString("yyyy-MM", CultureInfo.InvariantCulture), month.Planned, Math.Round(month.Expected, 2),
                    month.Low, month.High, month.Available, Math.Round(month.ExpectedShortage, 2),
                string.Join("; ", view.Picture.KitsFor(order.Spare.Part).Select(k => PackageWords.Kit(k.Chain, k.Kit))),
                string.Join("; ", view.ShorteningsFor(order.Spare.Part).Select(s => s.Chain))]]);

    /// <summary>A cell as CSV writes it.</summary>
    public static string Text(object? cell) => cell switch
    {
        null => "",
        DateTimeOffset at => at.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture),
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
        _ => cell.ToString() ?? "",
    };
}
