using WearWatch.Chains.Parts;
using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Chains.Families;

/// <summary>Round-steel link chain: rings, without pins or plates.</summary>
internal sealed class RoundLinkChain : ChainFamily
{
    public override string Name => "round_link";
    public override Phrase Words => $"round-link";
    public override int Place => 7;
    public override bool AlwaysLifts => false;
    public override bool LiftsByNature => true;

    // It has no joint to take out: a cut in it is a repair, and that is its maker's.
    public override bool MayBeShortened => false;

    // Every second link of a round-link chain stands upright: an odd one cannot be closed. Common practice.
    public override bool ClosesAtOdd => false;
    public override bool RollerDriveLimitsHold => false;
    public override bool RunsOnTeeth => false;
    public override MeasuredPoints Measured => MeasuredPoints.LinkEdges;
    public override bool LinksAlternate => false;

    public override SpanRule Span => SpanRule.OfLinks(11);

    public override Phrase WhereToMeasure =>
        $"Choose the section that runs over the load wheel most often; look at the links' contact ends first.";

    public override IReadOnlyList<Phrase> HowToMeasure =>
    [
        $"Pull it straight. Measure over {Span.Fewest} links, from inner edge to inner edge.",
        $"Measure the diameter where two links touch, too.",
    ];

    public override Sourced NewLengthTolerancePercent => Sourced.FromMemory(0.15);

    public override ReplacementLimit GeneralLimit =>
        ReplacementLimit.OfAnyChain with { Rule = $"a maker's rule for any chain: above 2 %; its own maker's table goes before" };


    // Where neither the hoist's maker nor the card says more: the strictest general figure that was read, for a powered hoist.
    public override ReplacementLimit LiftingLimit =>
        ReplacementLimit.Read(1.5, LimitReason.Lifting, 64, $"round-link chain of a powered hoist, only if its maker gives no "
            + $"figure; the maker's table goes before");

    public override IReadOnlyList<PartRule> PartRules => PartSets.OfRings;
    public override bool GeneralLimitGivesWay => true;

    public override IReadOnlyList<ReplacementLimit> LimitAdvice =>
    [
        ReplacementLimit.Recalled(
            2, LimitReason.Lifting, $"round-steel link chain over 11 links; a link worn by 10 % of its diameter"),
    ];

    // The law is set by roller chain drives; links bear on links.
    public override bool HasExpectedWear => false;

    public override IReadOnlyList<Phrase> Cautions =>
        [$"Measure the links' diameters where they touch, too: a length over 11 links hides a single bad one."];

    public override SwapWork UsualSwap => new(3, 1.5, 2);
    public override Phrase PropAtSwap => $"lifting gear and props for the chain and its load";
    public override Phrase ClosingStep => $"Draw it in untwisted and close it as its maker says.";

    public override IReadOnlyList<CheckPoint> CheckPoints(bool lifts) => lifts
        ? LinkPoints.All
        :
        [
            CommonPoints.BrokenParts($"A link is cracked, bent, twisted or stretched"),
            Contact, CommonPoints.Rust, CommonPoints.Teeth, CommonPoints.Line,
        ];

    public override Phrase SprocketAdvice(double? elongationPercent = null, int? chainsOnTheseSprockets = null) =>
        $"Look at the pockets of the load wheel before the new chain goes on: worn pockets wear a new chain early. "
        + $"Never join new chain to old.";

    public override OilingOfLifting? OilingWhenLifting => null;
    public override double? OilTablePitchMm(double pitchMm) => null;
    public override Sourced OiledByHandHours => OilIntervals.OfSlowChains;
    public override OilGrade? OilFor(Temperature ambient) => OilGrade.For(ambient);
    public override ChainCut Cut(int pitches) => new(pitches - 1, 1, 0);

    private static CheckPoint Contact { get; } = new(
        InspectionPoint.LinkContact, $"Links are worn by 10 % of their diameter where they touch", $"Replace the chain.",
        Sourced.Memory, StopsTheChain: true);
}
