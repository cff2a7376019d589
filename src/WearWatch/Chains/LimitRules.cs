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
    private const string Memory = Sourced.Memory;

    /// <summary>The limit of a chain on its card: the plant's own first, with what the rules would say beside it.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="pitchesOut">Pitches that were taken out of it since it was fitted.</param>
    public static LimitVerdict For(ChainCard card, int pitchesOut = 0)
    {
        var byRules = For(LimitCase.Of(card) with { PitchesOut = pitchesOut });
        if (card.LimitPercent is not { } own) return byRules;
        var set = new ReplacementLimit(own, LimitReason.SetByPlant, "set by the plant")
        {
            Rule = card.LimitSetReason.Length > 0 ? $"set by the plant: {card.LimitSetReason}" : "set by the plant",
        };
        return byRules with { Governing = set, AlsoHold = [byRules.Governing, .. byRules.AlsoHold] };
    }

    /// <summary>The limit of a case by the rules alone.</summary>
    public static LimitVerdict For(LimitCase @case)
    {
        var binding = Binding(@case).OrderBy(limit => limit.Percent).ToList();
        var advice = Advice(@case).OrderBy(limit => limit.Percent).ToList();
        if (binding.Count == 0) binding.Add(AnyChain);
        return new LimitVerdict(binding[0], binding[1..], advice);
    }

    private static IEnumerable<ReplacementLimit> Binding(LimitCase @case)
    {
        if (OfFamily(@case) is { } ofFamily) yield return ofFamily;
        if (RunsOnTeeth(@case.Family) && @case.SprocketTeeth.Count > 0
            && 200.0 / @case.SprocketTeeth.Max() is var byTeeth and < ReplacementLimit.GeneralPercent)
            yield return Read(byTeeth, LimitReason.SprocketTeeth, 8,
                $"200/N percent for the largest sprocket of {@case.SprocketTeeth.Max()} teeth");
        if (@case.FixedCentres)
            yield return Read(1.5, LimitReason.FixedCentres, 8, "fixed centres: nothing takes up the slack");
        if (@case.Parallel)
            yield return Read(1.5, LimitReason.ParallelStrands, 8,
                "chains that run in parallel must stay alike; replace them together");
        if (@case.HighPerformance)
            yield return Read(2, LimitReason.HighPerformance, 10, "high-performance drive: about 2 %");
        if (@case.Positioning)
            yield return Read(1, LimitReason.Timing, 10, "synchronous or positioning drive: about 1 %");
        if (@case.Timing)
            yield return Read(0.5, LimitReason.Timing, 29, "timing chain of an engine");
        if (@case.Lifts && @case.Family != ChainFamily.Leaf)
            yield return AnyChain with
            {
                Reason = LimitReason.Lifting,
                Rule = "a chain that lifts: 2 %, and a competent person's judgement before that",
            };
        if (Shortening.TakeUpLimitPercent(@case) is { } byTakeUp)
            yield return new ReplacementLimit(byTakeUp, LimitReason.TakeUpTravel, "computed: 100 (2 s/p + n)/(X - n) percent")
            {
                Rule = FormattableString.Invariant($"the take-up's {@case.TakeUpTravelMm:0.#} mm are used up"),
            };
    }

    private static ReplacementLimit? OfFamily(LimitCase @case) => @case.Family switch
    {
        ChainFamily.Roller => new ReplacementLimit(
            ReplacementLimit.GeneralPercent, LimitReason.General, "docs/references.md [8], [9], [10]")
        {
            Rule = "roller chain on a drive that can be adjusted, up to 67 teeth",
        },
        ChainFamily.DoublePitch =>
            Read(1.5, LimitReason.General, 31, "double pitch: the joints of a short-pitch chain over twice the pitch"),
        ChainFamily.Conveyor or ChainFamily.OffsetLink =>
            Read(3, LimitReason.General, 27, "conveyor chain: plan from 2 %, replace at 3 %") with
            {
                PlanFromPercent = 2,
            },
        ChainFamily.Leaf => new ReplacementLimit(3, LimitReason.Lifting, "docs/references.md [22], [30]")
        {
            Rule = "leaf chain: at 2 % a competent person sets a date within three months, at 3 % out of use at once; "
                + "replace as a set",
            PlanFromPercent = 2,
        },
        _ => null,
    };

    private static IEnumerable<ReplacementLimit> Advice(LimitCase @case)
    {
        switch (@case.Family)
        {
            case ChainFamily.Roller:
                yield return Read(1.5, LimitReason.General, 11, "a maker's rule: up to here wear costs no fatigue strength");
                break;
            case ChainFamily.Bush:
                yield return Recalled(3, LimitReason.General, "bush chain as roller chain");
                break;
            case ChainFamily.DoublePitch:
                yield return Recalled(1, LimitReason.General, "a maker's rule for extended pitch");
                break;
            case ChainFamily.Conveyor:
                yield return Read(2, LimitReason.General, 11, "a maker's rule: up to here wear costs no fatigue strength");
                break;
            case ChainFamily.RoundLink:
                yield return Recalled(2, LimitReason.Lifting,
                    "round-steel link chain over 11 links; a link worn by 10 % of its diameter");
                break;
            default:
                break;
        }

        if (@case.Family is ChainFamily.Roller or ChainFamily.Bush or ChainFamily.Conveyor or ChainFamily.OffsetLink)
            yield return AnyChain;
        if (@case is { FixedCentres: true, TakeUpTravelMm: null or 0 })
            yield return Recalled(0.7, LimitReason.FixedCentres, "no take-up at all: a maker's rule of 0.7 to 1.0 %");
    }

    /// <summary>
    /// The one rule that is meant for any chain. It governs kinds that have no rule of their own, and is advice for the others.
    /// </summary>
    private static ReplacementLimit AnyChain =>
        Read(2, LimitReason.General, 28,
            "a maker's rule for any chain: above 2 %, or plates worn by 5 % of their height, chain and wheels together");

    private static bool RunsOnTeeth(ChainFamily family) => family is not (ChainFamily.Leaf or ChainFamily.RoundLink);

    private static ReplacementLimit Read(double percent, LimitReason reason, int reference, string rule) =>
        new(percent, reason, $"docs/references.md [{reference}]") { Rule = rule };

    private static ReplacementLimit Recalled(double percent, LimitReason reason, string rule) =>
        new(percent, reason, Memory) { Rule = rule, IsVerified = false };
}
