using WearWatch.Phrases;

namespace WearWatch.Chains;

/// <summary>
/// The rules of the trade for when a chain is to be replaced. They disagree, so the lowest that applies governs.
/// </summary>
/// <remarks>
/// Most figures apply to one kind of chain and one kind of drive; see docs/references.md for where each was read. Figures that
/// were only recalled are advice, unless nothing else is known for the kind of chain.
/// </remarks>
public static class LimitRules
{
    /// <summary>200/N percent of the largest sprocket that the source lists, 150 teeth: docs/references.md [8].</summary>
    private const double LeastByTeeth = 200.0 / 150;

    private static ReplacementLimit OfFixedCentres =>
        ReplacementLimit.Read(1.5, LimitReason.FixedCentres, 8, $"fixed centres: nothing takes up the slack");

    private static ReplacementLimit OfParallel => ReplacementLimit.Read(1.5, LimitReason.ParallelStrands, 8,
        $"chains that run in parallel must stay alike; replace them together");

    /// <summary>The limit of a chain on its card: the plant's own first, with what the rules would say beside it.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="pitchesOut">Pitches that were taken out of it since it was fitted.</param>
    /// <param name="takeUpAheadMm">How much sooner than by its elongation the take-up ends, in millimetres of its travel.</param>
    public static LimitVerdict For(ChainCard card, int pitchesOut = 0, double takeUpAheadMm = 0)
    {
        var @case = LimitCase.Of(card) with { PitchesOut = pitchesOut, TakeUpAheadMm = takeUpAheadMm };
        var byRules = For(@case);
        if (card.LimitPercent is not { } own) return byRules;
        // A person may be stricter with what lifts than its standard is, never milder: docs/safety.md.
        if (card.HoldsLoad && own >= byRules.Governing.Percent) return byRules;
        var set = new ReplacementLimit(own, LimitReason.SetByPlant, "set by the plant")
        {
            Rule = card.LimitSetReason.Length > 0 ? Phrase.Of($"set by the plant: {card.LimitSetReason}") : $"set by the plant",
            PlanFromPercent = card.HoldsLoad ? byRules.Governing.PlanFromPercent : null,
        };
        return byRules with
        {
            Governing = set,
            AlsoHold = [byRules.Governing, .. byRules.AlsoHold],
            TakeUp = TakeUpEnd.Of(@case, own),
            LowestByTeethPercent = null,
        };
    }

    /// <summary>The limit of a case by the rules alone.</summary>
    public static LimitVerdict For(LimitCase @case)
    {
        var binding = Binding(@case).ToList();
        if (binding.Count == 0) binding.Add(@case.Family.GeneralLimit);
        var takeUp = TakeUpEnd.Of(@case, binding.Min(limit => limit.Percent));
        // A take-up at its end replaces a chain only where pitches cannot be taken out any more.
        if (takeUp is { Task: TakeUpTask.Replace }) binding.Add(ByTakeUp(@case, takeUp));
        binding = [.. binding.OrderBy(limit => limit.Percent)];
        return new LimitVerdict(binding[0], binding[1..], [.. Advice(@case).OrderBy(limit => limit.Percent)])
        {
            TakeUp = takeUp,
            LowestByTeethPercent = @case is { Family.RunsOnTeeth: true, SprocketTeeth: [] } && binding[0].Percent > LeastByTeeth
                ? LeastByTeeth
                : null,
        };
    }

    private static IEnumerable<ReplacementLimit> Binding(LimitCase @case)
    {
        var family = @case.Family;
        if (!family.GeneralLimitGivesWay) yield return family.GeneralLimit;
        if (family.RunsOnTeeth && @case.SprocketTeeth.Count > 0
            && 200.0 / @case.SprocketTeeth.Max() is var byTeeth and < ReplacementLimit.GeneralPercent)
            yield return ReplacementLimit.Read(byTeeth, LimitReason.SprocketTeeth, 8,
                $"200/N percent for the largest sprocket of {@case.SprocketTeeth.Max()} teeth");
        if (@case.FixedCentres && family.RollerDriveLimitsHold) yield return OfFixedCentres;
        if (@case.Parallel && family.RollerDriveLimitsHold) yield return OfParallel;
        if (@case.HighPerformance)
            yield return ReplacementLimit.Read(2, LimitReason.HighPerformance, 10, $"high-performance drive: about 2 %");
        if (@case.Positioning)
            yield return ReplacementLimit.Read(1, LimitReason.Timing, 10, $"synchronous or positioning drive: about 1 %");
        if (@case.Timing)
            yield return ReplacementLimit.Read(0.5, LimitReason.Timing, 29, $"timing chain of an engine");
        if (@case.Lifts && family.GeneralLimit.Reason != LimitReason.Lifting)
            yield return @case.ByMakersTable ?? family.LiftingLimit;
    }

    private static ReplacementLimit ByTakeUp(LimitCase @case, TakeUpEnd end) =>
        new(end.Percent, LimitReason.TakeUpTravel, "computed: 100 (2 s/p + n)/(X - n) percent")
        {
            Rule = $"the take-up's {@case.TakeUpTravelMm:0.#} mm are used up",
        };

    private static IEnumerable<ReplacementLimit> Advice(LimitCase @case)
    {
        foreach (var advice in @case.Family.LimitAdvice) yield return advice;
        if (@case.Parallel && !@case.Family.RollerDriveLimitsHold)
            yield return OfParallel with
            {
                Rule = $"read for drives of roller chain that run in parallel; here the difference of their lengths counts",
            };
        if (@case.FixedCentres && !@case.Family.RollerDriveLimitsHold)
            yield return OfFixedCentres with
            {
                Rule = $"read for drives of roller chain with fixed centres; for this kind set the plant's own limit",
            };
        if (@case is { FixedCentres: true, TakeUpTravelMm: null or 0, Family.RollerDriveLimitsHold: true })
            yield return ReplacementLimit.Recalled(
                0.7, LimitReason.FixedCentres, $"no take-up at all: a maker's rule of 0.7 to 1.0 %");
    }
}
