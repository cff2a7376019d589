using WearWatch.Chains.Parts;
using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Chains.Families;

/// <summary>Offset-link chain with rollers: all links alike, inner at one end and outer at the other.</summary>
internal sealed class OffsetLinkChain : ChainFamily
{
    public override string Name => "offset_link";
    public override Phrase Words => $"offset-link";
    public override int Place => 5;
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
        ReplacementLimit.Read(3, LimitReason.General, 27, $"conveyor chain: plan from 2 %, replace at 3 %") with
        {
            PlanFromPercent = 2,
        };

    public override ReplacementLimit LiftingLimit => ReplacementLimit.OfAnyChainThatLifts;
    public override IReadOnlyList<PartRule> PartRules => PartSets.OfConveyors;
    public override bool GeneralLimitGivesWay => false;
    public override IReadOnlyList<ReplacementLimit> LimitAdvice => [ReplacementLimit.OfAnyChain];

    // The law is set by roller chain drives. A conveyor wears by what it carries, by dirt and by its guides.
    public override bool HasExpectedWear => false;

    public override IReadOnlyList<Phrase> Cautions =>
        [$"A conveyor may start from afar, and an inclined one may run back: secure it against both."];

    public override SwapWork UsualSwap => new(2, 2, 2);
    public override Phrase PropAtSwap => $"support for the slack strand";
    public override Phrase ClosingStep => $"Draw it in and close it as its maker says; secure every pin.";

    public override IReadOnlyList<CheckPoint> CheckPoints(bool lifts) => lifts
        ? ConveyorPoints.Lifting
        :
        [
            CommonPoints.Cracked, CommonPoints.Stiff, ConveyorPoints.Plates,
            CommonPoints.Rollers, ConveyorPoints.Pins, ConveyorPoints.Bushes, CommonPoints.Rust, CommonPoints.Dry,
            ConveyorPoints.Teeth, CommonPoints.Line, CommonPoints.Sag(MayBeShortened),
        ];

    public override Phrase SprocketAdvice(double? elongationPercent = null, int? chainsOnTheseSprockets = null) =>
        Families.SprocketAdvice.OnTeeth(elongationPercent, chainsOnTheseSprockets);

    public override OilingOfLifting? OilingWhenLifting => null;
    public override double? OilTablePitchMm(double pitchMm) => null;
    public override Sourced OiledByHandHours => OilIntervals.OfSlowChains;
    public override OilGrade? OilFor(Temperature ambient) => OilGrade.For(ambient);
    public override ChainCut Cut(int pitches) => ChainCut.Whole(pitches);
}
