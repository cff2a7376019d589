using WearWatch.Planning.Supply;

namespace WearWatch.Planning.Plans;

/// <summary>What must be ordered when for a plan, and what chance may ask for beside it.</summary>
public static class OrderList
{
    /// <summary>
    /// One entry for each part that a chain of the input may need for its swap or its shortening, by designation and kind.
    /// </summary>
    public static IReadOnlyList<PartOrder> For(PlanInput input, SwapPlan plan)
    {
        var shortenings = PlannedShortening.LeftBy(plan, input);
        return [.. input.Tasks.SelectMany(t => t.Needs).Concat(shortenings.SelectMany(s => s.Needs)).Select(n => n.Part)
            .Distinct().OrderBy(p => p.Designation, StringComparer.Ordinal).ThenBy(p => p.Kind)
            .Select(p => OrderOf(input, plan, shortenings, p))];
    }

    private static PartOrder OrderOf(PlanInput input, SwapPlan plan, IReadOnlyList<PlannedShortening> shortenings, Part part)
    {
        (DateTimeOffset At, int Quantity)[] joined =
            [.. from s in shortenings from n in s.Needs where n.Part == part select (s.At, n.Quantity)];
        var record = input.Spares.FirstOrDefault(s => s.Part == part);
        var spare = record ?? new Spare { Part = part };
        var quantityOf = input.Tasks.ToDictionary(t => t.Chain, t => t.Needs.Where(n => n.Part == part).Sum(n => n.Quantity));
        var planned = plan.Placements
            .Where(p => quantityOf.GetValueOrDefault(p.Chain) > 0)
            .SelectMany(p => NeededAt(p, input.Now) is { } at ? [(At: at, Quantity: quantityOf[p.Chain])] : Nothing)
            .Concat(joined).OrderBy(p => p.At).ToArray();
        var (missing, neededBy) = Missing(spare, planned);
        return new PartOrder(
            spare, record is not null, MonthsOf(input, spare, planned, joined, quantityOf), spare.InPacks(missing), neededBy,
            neededBy - spare.LeadTime);
    }

    private static (DateTimeOffset At, int Quantity)[] Nothing { get; } = [];

    /// <summary>Parts are needed for a swap at its shutdown, and at once for a chain that is out of use without one.</summary>
    private static DateTimeOffset? NeededAt(Placement placement, DateTimeOffset now) => placement.Window is { } window
        ? window.Start
        : placement.OutOfUseFrom is { } from ? (from > now ? from : now) : null;

    private static (int Missing, DateTimeOffset? First) Missing(Spare spare, (DateTimeOffset At, int Quantity)[] planned)
    {
        var (sum, missing, first) = (0, 0, (DateTimeOffset?)null);
        foreach (var day in planned.GroupBy(p => p.At))
        {
            sum += day.Sum(p => p.Quantity);
            var lacking = sum - spare.AvailableAt(day.Key);
            if (lacking > 0) first ??= day.Key;
            missing = Math.Max(missing, lacking);
        }

        return (missing, first);
    }

    private static PartMonth[] MonthsOf(
        PlanInput input, Spare spare, (DateTimeOffset At, int Quantity)[] planned, (DateTimeOffset At, int Quantity)[] joined,
        Dictionary<string, int> quantityOf)
    {
        var (months, before) = (new List<PartMonth>(), 0.0);
        for (var start = MonthOf(input.Now); start < input.HorizonEnd; start = start.AddMonths(1))
        {
            var end = start.AddMonths(1);
            var hours = input.Calendar.Between(input.Now, end).Hours;
            var demand = new Demand([.. input.Tasks.Where(t => quantityOf[t.Chain] > 0)
                .Select(t => (quantityOf[t.Chain], t.Left.ProbabilityPast(hours))),
                .. joined.Where(j => j.At < end).Select(j => (j.Quantity, 1.0))]);
            var available = spare.AvailableAt(end);
            months.Add(new PartMonth
            {
                Month = DateOnly.FromDateTime(start.Date),
                Planned = planned.Where(p => p.At >= start && p.At < end).Sum(p => p.Quantity),
                Expected = demand.Mean - before,
                Low = demand.Quantile(0.1),
                High = demand.Quantile(0.9),
                Available = available,
                ExpectedShortage = demand.ExpectedShortage(available),
            });
            before = demand.Mean;
        }

        return [.. months];
    }

    private static DateTimeOffset MonthOf(DateTimeOffset moment) => new(moment.Year, moment.Month, 1, 0, 0, 0, moment.Offset);
}
