using WearWatch.Chains.Parts;
using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Chains.Families;

/// <summary>Inverted-tooth chain: toothed plates that run into the wheel.</summary>
internal sealed class InvertedToothChain : ChainFamily
{
    public override string Name => "inverted_tooth";
    public override Phrase Words => $"inverted-tooth";
    public override int Place => 8;
    public override bool AlwaysLifts => false;
    public override bool LiftsByNature => false;
    public override bool MayBeShortened => true;
    public override bool ClosesAtOdd => true;
    public override bool RollerDriveLimitsHold => false;
    public override bool RunsOnTeeth => true;
    public override MeasuredPoints Measured => MeasuredPoints.PinMiddles;
    public override bool LinksAlternate => false;
    public override SpanRule Span => SpanRule.OfShortPitch;

    public override Phrase WhereToMeasure =>
        $"Choose a straight, taut span between two sprockets, off the teeth, and away from the connecting link.";

    public override IReadOnlyList<Phrase> HowToMeasure =>
        [$"Pull it straight. From pin middle to pin middle; all links are alike, so that any number will do."];

    public override Sourced NewLengthTolerancePercent => Sourced.FromMemory(0.15);

    public override ReplacementLimit GeneralLimit =>
        ReplacementLimit.OfAnyChain with { Rule = $"a maker's rule for any chain: above 2 %, chain and sprockets together" };

    public override ReplacementLimit LiftingLimit => ReplacementLimit.OfAnyChainThatLifts;
    public override IReadOnlyList<PartRule> PartRules => PartSets.OfToothedPlates;
    public override bool GeneralLimitGivesWay => true;
    public override IReadOnlyList<ReplacementLimit> LimitAdvice => [];

    // The law is set by roller chain drives; rocker joints roll and hardly slide.
    public override bool HasExpectedWear => false;
    public override IReadOnlyList<Phrase> Cautions => [];
    public override SwapWork UsualSwap => new(1.5, 0.5, 1);
    public override Phrase PropAtSwap => $"support for the slack strand";
    public override Phrase ClosingStep => $"Draw it in and close it as its maker says; secure every pin.";

    public override IReadOnlyList<CheckPoint> CheckPoints(bool lifts) => lifts
        ? HoistPoints.WithoutRollers
        :
        [
            CommonPoints.Cracked, CommonPoints.Stiff, CommonPoints.Plates,
            CommonPoints.Rust, CommonPoints.Dry, CommonPoints.Teeth, CommonPoints.Line, CommonPoints.Sag(MayBeShortened),
        ];

    public override Phrase SprocketAdvice(double? elongationPercent = null, int? chainsOnTheseSprockets = null) =>
        Families.SprocketAdvice.OnTeeth(elongationPercent, chainsOnTheseSprockets);

    public override OilingOfLifting? OilingWhenLifting => null;
    public override double? OilTablePitchMm(double pitchMm) => null;
    public override Sourced OiledByHandHours => OilIntervals.OfRollerDrives;
    public override OilGrade? OilFor(Temperature ambient) => OilGrade.For(ambient);
    public override ChainCut Cut(int pitches) => ChainCut.Whole(pitches);
}
