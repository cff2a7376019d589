using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Lubrication;

namespace WearWatch.Plant.Bench;

/// <summary>Answers how, with what, how much and how often a chain is to be oiled.</summary>
/// <remarks>
/// Names: <c>type</c> or <c>pitch_mm</c> with <c>family</c>, <c>strands</c>; <c>speed</c>; <c>ambient_c</c>; <c>method</c>,
/// <c>place</c>, <c>material</c>, <c>lubrication</c>, <c>dust</c>, <c>interval_h</c>, <c>surroundings_factor</c>; <c>lifts</c>.
/// </remarks>
public static class OilBench
{
    /// <summary>How the chain is to be oiled, or what of the question cannot be read.</summary>
    public static BenchAnswer<OilCalculation> Answer(Asked asked)
    {
        var type = asked.Type("type");
        var pitchMm = asked.Number("pitch_mm", 0.1, 2000) ?? type?.PitchMm?.Value;
        if (pitchMm is null && !asked.Told("type")) asked.Refuse("pitch_mm", $"Give the chain type or the pitch.");
        var family = asked.Family("family") ?? type?.Family ?? ChainFamily.Usual;
        var card = new ChainCard
        {
            Name = "asked",
            PitchMm = pitchMm ?? 1,
            Family = family,
            Lifts = family.Lifts(asked.Tick("lifts")),
            Strands = asked.Whole("strands", 1, 24) ?? type?.Strands ?? 1,
            OilPlace = asked.Word<OilPlace>("place") ?? OilPlace.Ordinary,
            Material = asked.Word<ChainMaterial>("material") ?? ChainMaterial.Steel,
            OilMethod = asked.Word<OilMethod>("method"),
            OilingIntervalHours = asked.Number("interval_h", 0.001, 100_000),
            OilingSurroundingsFactor = asked.Number("surroundings_factor", 0.05, 20) ?? 1,
            Duty = new Duty
            {
                SpeedMetresPerSecond = asked.Quantity("speed", QuantityKind.Speed),
                AmbientC = asked.Number("ambient_c", -60, 400),
                Lubrication = asked.Word<LubricationState>("lubrication") ?? LubricationState.Manual,
                Dust = asked.Word<DustLevel>("dust"),
            },
        };
        return asked.Wrong.Count > 0
            ? new BenchAnswer<OilCalculation>.Refused(asked.Wrong)
            : new BenchAnswer<OilCalculation>.Answered(
                new OilCalculation(OilAdvice.For(card), OilingPlan.For(card, OilTerms.Default, isFirst: false))
                {
                    Cautions = Caution.For(card),
                    HoldsLoad = card.HoldsLoad,
                });
    }
}
