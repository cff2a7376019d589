using WearWatch.Chains.Parts;
using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Chains.Families;

/// <summary>A chain that none of the others describes.</summary>
internal sealed class CustomChain : ChainFamily
{
    public override string Name => "custom";
    public override Phrase Words => $"custom";
    public override int Place => 9;
    public override bool AlwaysLifts => false;
    public override bool LiftsByNature => false;
    public override bool MayBeShortened => true;
    public override bool ClosesAtOdd => true;
    public override bool RollerDriveLimitsHold => false;
    public override bool RunsOnTeeth => true;
    public override MeasuredPoints Measured => MeasuredPoints.PinMiddles;
    public override bool LinksAlternate => true;
    public override SpanRule Span => SpanRule.OfShortPitch;

    public override Phrase WhereToMeasure =>
        $"Choose a straight, taut span between two sprockets, off the teeth, and away from the connecting link.";

    public override IReadOnlyList<Phrase> HowToMeasure =>
    [
        $"Pull it straight, or measure in place, taut.",
        $"Tape: from pin middle to pin middle, an even number of pitches; begin at a graduation, not at the hook.",
        $"Caliper: between the inner sides of the two end rollers, then over their outer sides.",
    ];

    public override Sourced NewLengthTolerancePercent => Sourced.FromMemory(0.15);

    public override ReplacementLimit GeneralLimit =>
        ReplacementLimit.OfAnyChain with { Rule = $"a maker's rule for any chain: above 2 %; its own maker's rule goes before" };

    public override ReplacementLimit LiftingLimit => ReplacementLimit.OfAnyChainThatLifts;
    public override IReadOnlyList<PartRule> PartRules => PartSets.OfAny;
    public override bool GeneralLimitGivesWay => true;
    public override IReadOnlyList<ReplacementLimit> LimitAdvice => [];

    // Of an unknown joint nothing is expected.
    public override bool HasExpectedWear => false;
    public override IReadOnlyList<Phrase> Cautions => [];
    public override SwapWork UsualSwap => new(1.5, 0.5, 1);
    public override Phrase PropAtSwap => $"support for the slack strand";
    public override Phrase ClosingStep => $"Draw it in and close it as its maker says; secure every pin.";

    public override IReadOnlyList<CheckPoint> CheckPoints(bool lifts) => lifts
        ? HoistPoints.All
        :
        [
            CommonPoints.Cracked, CommonPoints.Stiff, CommonPoints.Plates,
            CommonPoints.Rollers, CommonPoints.Rust, CommonPoints.Dry, CommonPoints.Teeth, CommonPoints.Line,
            CommonPoints.Sag(MayBeShortened),
        ];

    public override Phrase SprocketAdvice(double? elongationPercent = null, int? chainsOnTheseSprockets = null) =>
        Families.SprocketAdvice.OnTeeth(elongationPercent, chainsOnTheseSprockets);

    public override OilingOfLifting? OilingWhenLifting => null;
    public override double? OilTablePitchMm(double pitchMm) => null;
    public override Sourced OiledByHandHours => OilIntervals.OfSlowChains;
    public override OilGrade? OilFor(Temperature ambient) => OilGrade.For(ambient);
    public override ChainCut Cut(int pitches) => ChainCut.OfAlternatingLinks(pitches);
}
