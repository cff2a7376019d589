using WearWatch.Units;

namespace WearWatch.Chains.Families;

/// <summary>Double-pitch roller chain, ISO 1275: the joints of a short-pitch chain at twice the pitch.</summary>
internal sealed class DoublePitchChain : ChainFamily
{
    public override string Name => "double_pitch";
    public override string Words => "double-pitch";
    public override int Place => 2;
    public override bool AlwaysLifts => false;
    public override bool LiftsByNature => false;
    public override bool MayBeShortened => true;
    public override bool ClosesAtOdd => true;
    public override bool RunsOnTeeth => true;
    public override MeasuredPoints Measured => MeasuredPoints.PinMiddles;
    public override bool LinksAlternate => true;
    public override int? FixedSpan => null;

    public override string WhereToMeasure =>
        "Choose a straight, taut span between two sprockets, off the teeth, and away from the connecting link.";

    public override IReadOnlyList<string> HowToMeasure =>
    [
        "Pull it straight, or measure in place, taut.",
        "Tape: from pin middle to pin middle, an even number of pitches; begin at a graduation, not at the hook.",
        "Caliper: between the inner sides of the two end rollers, then over their outer sides.",
    ];

    public override Sourced NewLengthTolerancePercent => Sourced.FromMemory(0.15);

    public override ReplacementLimit GeneralLimit =>
        ReplacementLimit.Read(
            1.5, LimitReason.General, 31, "double pitch: the joints of a short-pitch chain over twice the pitch");

    public override ReplacementLimit LiftingLimit => ReplacementLimit.OfAnyChainThatLifts;
    public override bool GeneralLimitGivesWay => false;

    public override IReadOnlyList<ReplacementLimit> LimitAdvice =>
        [ReplacementLimit.Recalled(1, LimitReason.General, "a maker's rule for extended pitch")];

    public override bool HasExpectedWear => true;
    public override IReadOnlyList<string> Cautions => [];
    public override SwapWork UsualSwap => new(1.5, 0.5, 1);
    public override string PropAtSwap => "support for the slack strand";

    public override string ClosingStep =>
        "Draw it in, close it on a sprocket; a spring clip's closed end points in the direction of running.";

    public override IReadOnlyList<CheckPoint> CheckPoints(bool lifts) => lifts
        ? HoistPoints.All
        :
        [
            CommonPoints.Cracked, CommonPoints.Stiff, CommonPoints.Plates,
            CommonPoints.Rollers, CommonPoints.Rust, CommonPoints.Dry, CommonPoints.Teeth, CommonPoints.Line,
            CommonPoints.Sag(MayBeShortened),
        ];

    public override string SprocketAdvice(double? elongationPercent = null, int? chainsOnTheseSprockets = null) =>
        Families.SprocketAdvice.OnTeeth(elongationPercent, chainsOnTheseSprockets);

    public override OilingOfLifting? OilingWhenLifting => null;
    public override OilGrade? OilFor(Temperature ambient) => OilGrade.For(ambient);
    public override ChainCut Cut(int pitches) => ChainCut.OfAlternatingLinks(pitches);
}
