using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Plant.Bench;

/// <summary>Answers at which elongation a chain is to be replaced.</summary>
/// <remarks>
/// Names: <c>type</c> or <c>family</c>; <c>teeth</c>; <c>fixed_centres</c>, <c>parallel</c>, <c>timing</c>, <c>positioning</c>,
/// <c>high_performance</c>, <c>lifts</c>; <c>take_up_mm</c> with <c>chain_pitches</c> and <c>pitch_mm</c>; <c>elongation_pct</c>.
/// </remarks>
public static class LimitBench
{
    /// <summary>At which elongation the chain is to be replaced, or what of the question cannot be read.</summary>
    public static BenchAnswer<LimitCalculation> Answer(Asked asked)
    {
        var type = asked.Type("type");
        var elongation = asked.Number("elongation_pct", -5, 20);
        var @case = Case(asked, type);
        return asked.Wrong.Count > 0
            ? new BenchAnswer<LimitCalculation>.Refused(asked.Wrong)
            : new BenchAnswer<LimitCalculation>.Answered(new LimitCalculation(@case, LimitRules.For(@case), elongation));
    }

    /// <summary>The chain as it is asked about. A kind that lifts by nature does unless <c>lifts</c> says no.</summary>
    internal static LimitCase Case(Asked asked, ChainType? type)
    {
        var family = asked.Family("family") ?? type?.Family ?? ChainFamily.Usual;
        return new LimitCase
        {
            Family = family,
            SprocketTeeth = [.. asked.Teeth("teeth"), .. asked.Teeth("driven_teeth")],
            FixedCentres = asked.Tick("fixed_centres"),
            Parallel = asked.Tick("parallel"),
            Timing = asked.Tick("timing"),
            Positioning = asked.Tick("positioning"),
            HighPerformance = asked.Tick("high_performance"),
            Lifts = family.Lifts(asked.Tick("lifts"), asked.Told("lifts") && !asked.Tick("lifts")),
            TakeUpTravelMm = asked.Number("take_up_mm", 0, 100_000),
            ChainPitches = asked.Whole("chain_pitches", 1, 100_000),
            PitchMm = asked.Number("pitch_mm", 0.1, 2000) ?? type?.PitchMm?.Value,
        };
    }
}
