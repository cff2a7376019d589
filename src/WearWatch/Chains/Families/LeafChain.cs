using WearWatch.Chains.Parts;
using WearWatch.Criteria;
using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Chains.Families;

/// <summary>Leaf chain, ISO 4347: plates and pins only, runs over sheaves, lifts.</summary>
internal sealed class LeafChain : ChainFamily
{
    public override string Name => "leaf";
    public override Phrase Words => $"leaf";
    public override int Place => 4;
    public override bool AlwaysLifts => true;
    public override bool LiftsByNature => true;
    public override bool MayBeShortened => false;
    public override bool ClosesAtOdd => true;
    public override bool RollerDriveLimitsHold => false;
    public override bool RunsOnTeeth => false;
    public override MeasuredPoints Measured => MeasuredPoints.PinMiddles;
    public override bool LinksAlternate => true;
    public override SpanRule Span => SpanRule.OfShortPitch;
    public override Phrase WhereToMeasure => $"Choose the section that bends over the sheave most often; it wears first.";

    public override IReadOnlyList<Phrase> HowToMeasure =>
        [$"Pull it straight. Tape: from pin middle to pin middle, an even number of pitches."];

    public override Sourced NewLengthTolerancePercent => Sourced.FromMemory(0.15);

    public override ReplacementLimit GeneralLimit =>
        new(LiftingCriteria.ValueOf("leaf-length-discard"), LimitReason.Lifting, "docs/references.md [22], [30]")
        {
            Rule = $"leaf chain: at 2 % a competent person sets a date within three months, at 3 % out of use at once; "
                + $"replace as a set",
            PlanFromPercent = LiftingCriteria.ValueOf("leaf-length-plan"),
        };

    public override ReplacementLimit LiftingLimit => GeneralLimit;
    public override IReadOnlyList<PartRule> PartRules => PartSets.OfLeaves;
    public override bool GeneralLimitGivesWay => false;
    public override IReadOnlyList<ReplacementLimit> LimitAdvice => [];

    // The law is set by roller chain drives; plates on pins over sheaves are another joint.
    public override bool HasExpectedWear => false;

    public override IReadOnlyList<Phrase> Cautions =>
        [$"Replace the chains of a pair together; look at plates, pins, anchors and sheaves too."];

    public override SwapWork UsualSwap => new(3, 1, 2);
    public override Phrase PropAtSwap => $"lifting gear and props for the chain and its load";
    public override Phrase ClosingStep => $"Draw it in and close it as its maker says; secure every pin.";

    public override IReadOnlyList<CheckPoint> CheckPoints(bool lifts) => LeafPoints.All;

    public override Phrase SprocketAdvice(double? elongationPercent = null, int? chainsOnTheseSprockets = null) =>
        $"Look at the sheaves and anchors; replace the chains of a pair together and never splice new to old.";

    // "Also 1 month, whichever comes first": the criterion's words. docs/references.md [67].
    public override OilingOfLifting? OilingWhenLifting => new(
        LiftingCriteria.ValueOf("leaf-interval-care"), 1, LiftingCriteria.Of("leaf-interval-care").SourceWords);

    public override double? OilTablePitchMm(double pitchMm) => null;
    public override Sourced OiledByHandHours => OilIntervals.OfSlowChains;
    public override OilGrade? OilFor(Temperature ambient) => OilGrade.For(ambient);
    public override ChainCut Cut(int pitches) => ChainCut.Whole(pitches);
}
