namespace WearWatch.Planning.Plans;

/// <summary>Finds where a placing hurts, and says what would help.</summary>
internal static class PlanRemarks
{
    /// <summary>A chain that is left on with at least this probability of passing its limit is named.</summary>
    private const double WorthNaming = 0.2;

    public static IReadOnlyList<PlanRemark> Of(PlanCase plan, int[] placing) =>
        [.. HardDateRemarks.Of(plan, placing), .. PreparationRemarks.Of(plan, placing), .. ChainsLeft(plan, placing),
            .. CrewsOverloaded(plan, placing), .. PartsShort(plan, placing), .. WindowsTooShort(plan, placing),
            .. PlacesGone(plan)];

    private static IEnumerable<PlanRemark> ChainsLeft(PlanCase plan, int[] placing) =>
        from u in Enumerable.Range(0, placing.Length)
        where placing[u] == PlanCase.Later && plan.OutOfUseFrom[u] is null && plan.OwnLater[u].ProbabilityPast >= WorthNaming
            && !plan.Units[u].MeasureFirst
        let unit = plan.Units[u]
        select new PlanRemark(
            PlanRemarkKind.ChainLeft, unit.Name, null, plan.OwnLater[u].ProbabilityPast,
            $"It is not swapped up to {plan.Input.HorizonEnd.Day()} and passes its limit before its next chance with "
                + $"{plan.OwnLater[u].ProbabilityPast:P0}.",
            WhatWouldHelp(plan, placing, u));

    /// <summary>Tries the chain in each of its windows and names what makes the best of them dear.</summary>
    private static Phrase WhatWouldHelp(PlanCase plan, int[] placing, int u)
    {
        if (plan.Fixed[u] == PlanCase.Later) return $"It is kept out of the plan by hand: release it.";
        if (plan.WindowsOf[u].Length == 0) return $"A planned shutdown of line {plan.Units[u].Line}.";
        if (plan.Workable[u].Count == 0) return Preparation.WhyNot(plan, u, plan.WindowsOf[u][^1])!;
        var now = PlanCosting.Of(plan, placing);
        var (w, there) = plan.WindowsOf[u].Where(plan.Workable[u].Contains)
            .Select(w => (w, Cost: Moved(plan, placing, u, w))).MinBy(x => x.Cost.Total);
        var window = plan.Windows[w];
        if (there.Total < now.Total)
            return $"Place it in the shutdown of {window.Start.Day()}: that costs {now.Total - there.Total:#,0} less.";
        var turn = plan.Turns.First(t => t.Windows.Contains(w));
        var overtime = (there.Overtime - now.Overtime) / Positive(plan.Input.Costs.OvertimePerHour);
        (double Cost, Phrase Help)[] dear =
        [
            (there.Overtime - now.Overtime, $"{overtime:0.#} h more of crew {turn.Crew} on {window.Start.Day()}."),
            (there.Express - now.Express, $"Its parts on the shelf by {window.Start.Day()}."),
            (there.Overruns - now.Overruns, $"A shutdown of line {window.Line} of at least {plan.Units[u].Hours:0.#} h."),
            (there.UnusedLife - now.UnusedLife,
                $"A shutdown of line {window.Line} nearer to its limit, or nothing: waiting costs less than any shutdown "
                    + $"planned."),
        ];
        return dear.MaxBy(x => x.Cost).Help;
    }

    private static PlanCost Moved(PlanCase plan, int[] placing, int u, int place)
    {
        int[] moved = [.. placing];
        moved[u] = place;
        return PlanCosting.Of(plan, moved);
    }

    private static IEnumerable<PlanRemark> CrewsOverloaded(PlanCase plan, int[] placing) =>
        from turn in plan.Turns
        let work = PlanCosting.WorkIn(plan, turn, placing)
        where work > turn.Hours + 1e-9
        let start = plan.Windows[turn.Windows[0]].Start
        select new PlanRemark(
            PlanRemarkKind.CrewOverloaded, turn.Name, start, work - turn.Hours,
            $"{work:0.#} h of work stand against {turn.Hours:0.#} h.",
            $"{work - turn.Hours:0.#} h more on {start.Day()}, or a longer shutdown.")
        {
            About = $"{turn.Crew}, {start.Day()}",
        };

    private static IEnumerable<PlanRemark> PartsShort(PlanCase plan, int[] placing) =>
        from supply in plan.Supplies
        let express = PlanCosting.ExpressQuantity(plan, supply, placing)
        where express > 0
        let need = PlanCosting.NeedByWindow(plan, supply, placing)
        let first = FirstShort(plan, supply, need)
        select new PlanRemark(
            PlanRemarkKind.PartShort, supply.Part.ToString(), first, express,
            $"{express:#,0} {supply.Part.Unit} are missing for swaps before {supply.OrdersArrive.Day()}, when an ordinary "
                + $"order of today arrives.",
            $"Order {supply.Spare.InPacks(express):#,0} {supply.Part.Unit} today to arrive by {first.Day()}.")
        {
            About = supply.Part.Words,
        };

    private static DateTimeOffset FirstShort(PlanCase plan, PartSupply supply, int[] need)
    {
        var sum = 0;
        for (var w = 0; w < need.Length; w++)
        {
            sum += need[w];
            if (need[w] > 0 && sum > supply.Spare.AvailableAt(plan.Windows[w].Start)) return plan.Windows[w].Start;
        }

        return plan.Input.HorizonEnd;
    }

    private static IEnumerable<PlanRemark> WindowsTooShort(PlanCase plan, int[] placing) =>
        from u in Enumerable.Range(0, placing.Length)
        where placing[u] != PlanCase.Later
        let window = plan.Windows[placing[u]]
        let over = plan.Units[u].Hours - window.Length.TotalHours
        where over > 1e-9
        select new PlanRemark(
            PlanRemarkKind.WindowTooShort, plan.Units[u].Name, window.Start, over,
            $"The swap takes {plan.Units[u].Hours:0.#} h and the shutdown lasts {window.Length.TotalHours:0.#} h.",
            $"A shutdown that is {over:0.#} h longer, or more hands.");

    private static IEnumerable<PlanRemark> PlacesGone(PlanCase plan) =>
        from kept in plan.Input.Kept.OrderBy(k => k.Key, StringComparer.Ordinal)
        let u = Array.FindIndex(plan.Units, unit => unit.Tasks.Any(t => t.Chain == kept.Key))
        where u >= 0 && kept.Value is { } && plan.Fixed[u] is null
        let late = plan.Input.Windows.FirstOrDefault(w => w.Id == kept.Value && !HardDate.Keeps(plan.Units[u], w))
        select new PlanRemark(
            PlanRemarkKind.PlaceGone, kept.Key, late?.Start, 0,
            late is null
                ? Phrase.Of($"The shutdown it was placed in is no longer planned for its line.")
                : Phrase.Of($"It holds a load, and the shutdown it was placed in begins after "
                    + $"{plan.Units[u].OutOfUseBy.Day()}, when it must be out of use."),
            late is null
                ? Phrase.Of($"Place it again.")
                : Phrase.Of($"Place it in an earlier shutdown, or take it out of use."));

    private static double Positive(double value) => value > 0 ? value : 1;
}
