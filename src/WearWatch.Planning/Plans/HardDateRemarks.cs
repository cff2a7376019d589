using System.Globalization;
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
            WhenOf(plan, u) + WhyOf(plan, u), WhatWouldHelp(plan, u));

    private static string WhenOf(PlanCase plan, int u) => IsPast(plan, u)
        ? Say($"It holds a load. Take it out of use now, its day was {plan.OutOfUseFrom[u]:yyyy-MM-dd}: ")
        : Say($"It holds a load. Out of use from {plan.OutOfUseFrom[u]:yyyy-MM-dd}: ");

    private static string WhyOf(PlanCase plan, int u) =>
        plan.Fixed[u] == PlanCase.Later ? "a person keeps it out of the shutdowns."
        : plan.Worthwhile[u].Length > 0 ? "it stands in no shutdown before that day."
        : plan.WindowsOf[u].Length == 0 ? $"no shutdown of line {plan.Units[u].Line} begins by that day."
        : Say($"no shutdown by that day suffices. That of {Last(plan, u).Start:yyyy-MM-dd}: ")
            + HardDate.Lacks(plan, u, plan.WindowsOf[u][^1]) + ".";

    private static string WhatWouldHelp(PlanCase plan, int u) =>
        IsPast(plan, u) ? "Renew it with all that belongs to it before the line lifts again."
        : plan.Fixed[u] == PlanCase.Later ? "Release it to the planner, or leave it out of use from that day."
        : plan.Worthwhile[u].Length > 0
            ? Say($"Place it in the shutdown of {plan.Windows[plan.Worthwhile[u][^1]].Start:yyyy-MM-dd}.")
        : plan.WindowsOf[u].Length == 0 ? $"A shutdown of line {plan.Units[u].Line} by that day."
        : "Arrange what is missing and place it there by hand, or enter another shutdown by that day.";

    private static bool IsPast(PlanCase plan, int u) => plan.OutOfUseFrom[u] <= plan.Input.Now;

    private static Windows.ShutdownWindow Last(PlanCase plan, int u) => plan.Windows[plan.WindowsOf[u][^1]];

    private static PlanRemark? RemarkOf(PlanInput input, LoadWarning load) => load.Kind switch
    {
        LoadWarningKind.CannotBeJudged => new PlanRemark(
            PlanRemarkKind.CannotBeJudged, load.Chain, null, 0,
            "It holds a load and cannot be judged from its readings: there is no date by which it must go.",
            "A competent person examines it before further use. Measure it."),
        LoadWarningKind.Stopped => new PlanRemark(
            PlanRemarkKind.OutOfUse, load.Chain, input.Now, 0,
            "It holds a load, and a finding or an examiner's report stops it: out of use now, until a competent person releases "
                + "it.",
            "Take it out of use in the register; its swap may then stand in any shutdown."),
        LoadWarningKind.TakenOut => new PlanRemark(
            PlanRemarkKind.OutOfUse, load.Chain, null, 0, "It holds a load, and a person has taken it out of use.",
            "Its swap may stand in any shutdown; until then it stays out of use."),
        LoadWarningKind.SwapBegun when load.OutOfUseBy is { } day && day <= input.HorizonEnd + input.Costs.NextChance =>
            new PlanRemark(
                PlanRemarkKind.OutOfUse, load.Chain, day, 0,
                Say($"It holds a load. The shutdown of its swap began on {load.Begun:yyyy-MM-dd}, and nobody has said what ")
                    + Say($"became of it. Unless a new chain is on: out of use from {day:yyyy-MM-dd}."),
                "Say after the stop whether it was swapped."),
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
            Say($"It holds a load, and its swap on {window.Start:yyyy-MM-dd} is not sure: {lacks}."),
            Say($"Arrange it, or the chain is out of use from {plan.OutOfUseFrom[u]:yyyy-MM-dd}."));

    private static string? LacksBesideOthers(PlanCase plan, int[] placing, int u)
    {
        var turn = plan.Turns.First(t => t.Windows.Contains(placing[u]));
        if (PlanCosting.WorkIn(plan, turn, placing) is var work && work > turn.Hours + 1e-9)
            return Say($"crew {turn.Name} has {turn.Hours:0.#} h for {work:0.#} h of work");
        var isShort = plan.Supplies.FirstOrDefault(s => plan.Units[u].Needs.ContainsKey(s.Part)
            && s.Binds(plan.Windows[placing[u]].Start) && PlanCosting.ExpressQuantity(plan, s, placing) > 0);
        return isShort is null ? null : $"{isShort.Part.Unit} of {isShort.Part} are missing without haste";
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
