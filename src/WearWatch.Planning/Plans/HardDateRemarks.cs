using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Plans;

/// <summary>What a plan says first: of chains that hold a load.</summary>
internal static class HardDateRemarks
{
    public static IEnumerable<PlanRemark> Of(PlanCase plan, int[] placing) =>
        OutOfUse(plan, placing).Concat(Unsure(plan, placing)).Concat(Warned(plan.Input)).OrderBy(remark => remark.Kind);

    private static IEnumerable<PlanRemark> Warned(PlanInput input) =>
        input.LoadWarnings.OrderBy(l => l.Chain, StringComparer.Ordinal).Select(l => RemarkOf(input, l)).OfType<PlanRemark>();

    private static IEnumerable<PlanRemark> OutOfUse(PlanCase plan, int[] placing) =>
        from u in Enumerable.Range(0, placing.Length)
        where placing[u] == PlanCase.Later && plan.OutOfUseFrom[u] is not null
        from task in plan.Units[u].Tasks
        select new PlanRemark(
            PlanRemarkKind.OutOfUse, task.Chain, plan.OutOfUseFrom[u], plan.OwnLater[u].ProbabilityPast,
            WhyOf(plan, u), WhatWouldHelp(plan, u));

    private static Phrase WhyOf(PlanCase plan, int u)
    {
        var (day, why) = (plan.OutOfUseFrom[u].Day(), WhyNowhere(plan, u));
        return IsPast(plan, u)
            ? Phrase.Of($"It holds a load. Take it out of use now, its day was {day}: {why}.")
            : Phrase.Of($"It holds a load. Out of use from {day}: {why}.");
    }

    private static Phrase WhyNowhere(PlanCase plan, int u)
    {
        if (plan.Fixed[u] == PlanCase.Later) return $"a person keeps it out of the shutdowns";
        if (plan.Worthwhile[u].Length > 0) return $"it stands in no shutdown before that day";
        if (plan.WindowsOf[u].Length == 0) return $"no shutdown of line {plan.Units[u].Line} begins by that day";
        var lacks = HardDate.Lacks(plan, u, plan.WindowsOf[u][^1]);
        return $"no shutdown by that day suffices. That of {Last(plan, u).Start.Day()}: {lacks}";
    }

    private static Phrase WhatWouldHelp(PlanCase plan, int u)
    {
        if (IsPast(plan, u)) return $"Renew it with all that belongs to it before the line lifts again.";
        if (plan.Fixed[u] == PlanCase.Later) return $"Release it to the planner, or leave it out of use from that day.";
        if (plan.Worthwhile[u].Length > 0)
            return $"Place it in the shutdown of {plan.Windows[plan.Worthwhile[u][^1]].Start.Day()}.";
        return plan.WindowsOf[u].Length == 0
            ? Phrase.Of($"A shutdown of line {plan.Units[u].Line} by that day.")
            : Phrase.Of($"Arrange what is missing and place it there by hand, or enter another shutdown by that day.");
    }

    private static bool IsPast(PlanCase plan, int u) => plan.OutOfUseFrom[u] <= plan.Input.Now;

    private static Windows.ShutdownWindow Last(PlanCase plan, int u) => plan.Windows[plan.WindowsOf[u][^1]];

    private static PlanRemark? RemarkOf(PlanInput input, LoadWarning load) => load.Kind switch
    {
        LoadWarningKind.CannotBeJudged => new PlanRemark(
            PlanRemarkKind.CannotBeJudged, load.Chain, null, 0,
            $"It holds a load and cannot be judged from its readings: there is no date by which it must go.",
            $"A competent person examines it before further use. Measure it."),
        LoadWarningKind.Stopped => new PlanRemark(
            PlanRemarkKind.OutOfUse, load.Chain, input.Now, 0,
            $"It holds a load, and a finding or an examiner's report stops it: out of use now, until a competent person "
                + $"releases it.",
            $"Take it out of use in the register; its swap may then stand in any shutdown."),
        LoadWarningKind.TakenOut => new PlanRemark(
            PlanRemarkKind.OutOfUse, load.Chain, null, 0, $"It holds a load, and a person has taken it out of use.",
            $"Its swap may stand in any shutdown; until then it stays out of use."),
        LoadWarningKind.SwapBegun when load.OutOfUseBy is { } day && day <= input.HorizonEnd + input.Costs.NextChance =>
            new PlanRemark(
                PlanRemarkKind.OutOfUse, load.Chain, day, 0,
                $"It holds a load. The shutdown of its swap began on {load.Begun.Day()}, and nobody has said what "
                    + $"became of it. Unless a new chain is on: out of use from {day.Day()}.",
                $"Say after the stop whether it was swapped."),
        _ => null,
    };

    /// <summary>Swaps before the date that take more than there is, placed by hand or together.</summary>
    private static IEnumerable<PlanRemark> Unsure(PlanCase plan, int[] placing) =>
        from u in Enumerable.Range(0, placing.Length)
        where placing[u] != PlanCase.Later && plan.OutOfUseFrom[u] is not null
        let lacks = HardDate.Lacks(plan, u, placing[u]) ?? LacksBesideOthers(plan, placing, u)
        where lacks is not null
        from task in plan.Units[u].Tasks
        let window = plan.Windows[placing[u]]
        select new PlanRemark(
            PlanRemarkKind.HardDateUnsure, task.Chain, window.Start, 0,
            $"It holds a load, and its swap on {window.Start.Day()} is not sure: {lacks}.",
            $"Arrange it, or the chain is out of use from {plan.OutOfUseFrom[u].Day()}.");

    private static Phrase? LacksBesideOthers(PlanCase plan, int[] placing, int u)
    {
        var turn = plan.Turns.First(t => t.Windows.Contains(placing[u]));
        if (PlanCosting.WorkIn(plan, turn, placing) is var work && work > turn.Hours + 1e-9)
            return $"crew {turn.Crew} has {turn.Hours:0.#} h for {work:0.#} h of work";
        var isShort = plan.Supplies.FirstOrDefault(s => plan.Units[u].Needs.ContainsKey(s.Part)
            && s.Binds(plan.Windows[placing[u]].Start) && PlanCosting.ExpressQuantity(plan, s, placing) > 0);
        return isShort is null ? null : Phrase.Of($"{isShort.Part.Unit} of {isShort.Part.Words} are missing without haste");
    }
}
