using WearWatch.Chains.Parts;
using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Chains.Families;

/// <summary>Double-pitch roller chain, ISO 1275: the joints of a short-pitch chain at twice the pitch.</summary>
internal sealed class DoublePitchChain : ChainFamily
{
    public override string Name => "double_pitch";
    public override Phrase Words => $"double-pitch";
    public override int Place => 2;
    public override bool AlwaysLifts => false;
    public override bool LiftsByNature => false;
    public override bool MayBeShortened => true;
    public override bool ClosesAtOdd => true;
    public override bool RollerDriveLimitsHold => true;
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
        ReplacementLimit.Read(
            1.5, LimitReason.General, 31, $"double pitch: the joints of a short-pitch chain over twice the pitch");

    public override ReplacementLimit LiftingLimit => ReplacementLimit.OfAnyChainThatLifts;
    public override IReadOnlyList<PartRule> PartRules => PartSets.OfRollers;
    public override bool GeneralLimitGivesWay => false;

    public override IReadOnlyList<ReplacementLimit> LimitAdvice =>
        [ReplacementLimit.Recalled(1, LimitReason.General, $"a maker's rule for extended pitch")];

    public override bool HasExpectedWear => false; // the law is set by drives of short-pitch roller chain
    public override IReadOnlyList<Phrase> Cautions => [];
    public override SwapWork UsualSwap => new(1.5, 0.5, 1);
    public override Phrase PropAtSwap => $"support for the slack strand";

    public override Phrase ClosingStep =>
        $"Draw it in, close it on a sprocket; a spring clip's closed end points in the direction of running.";

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
    public override double? OilTablePitchMm(double pitchMm) => pitchMm / 2;
    public override Sourced OiledByHandHours => OilIntervals.OfRollerDrives;
    public override OilGrade? OilFor(Temperature ambient) => OilGrade.For(ambient);
    public override ChainCut Cut(int pitches) => ChainCut.OfAlternatingLinks(pitches);
}
