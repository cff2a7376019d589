using WearWatch.Chains.Parts;
using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Chains.Families;

/// <summary>
/// Table-top chain, ISO 4348 (DIN 8153): flat plates of steel or plastic, hinged on pins, straight or round bends.
/// </summary>
/// <remarks>
/// No source was read for its limit and its sizes: what is recalled is advice, and the rule for any chain binds.
/// </remarks>
internal sealed class TableTopChain : ChainFamily
{
    public override string Name => "table_top";
    public override Phrase Words => $"table-top";
    public override int Place => 10;
    public override bool AlwaysLifts => false;
    public override bool LiftsByNature => false;
    public override bool MayBeShortened => true;
    public override bool ClosesAtOdd => true;
    public override bool RollerDriveLimitsHold => false;
    public override bool RunsOnTeeth => true;
    public override MeasuredPoints Measured => MeasuredPoints.PinMiddles;
    public override bool LinksAlternate => false;
    public override SpanRule Span => SpanRule.OfLongPitch;

    public override Phrase WhereToMeasure =>
        $"Choose a straight, loaded part of the upper run before the drive, off the teeth and out of the bends.";

    public override IReadOnlyList<Phrase> HowToMeasure =>
    [
        $"Pull it straight. From the edge of one plate to the same edge of another; all links are alike, so any number will do.",
        $"Plastic grows when warm: measure a clean chain at the temperature of the hall.",
    ];

    public override Sourced NewLengthTolerancePercent => Sourced.FromMemory(0.15);

    public override ReplacementLimit GeneralLimit =>
        ReplacementLimit.OfAnyChain with { Rule = $"a maker's rule for any chain: above 2 %; its own maker's rule goes before" };

    public override ReplacementLimit LiftingLimit => ReplacementLimit.OfAnyChainThatLifts;
    public override IReadOnlyList<PartRule> PartRules => PartSets.OfHingedPlates;
    public override bool GeneralLimitGivesWay => true;

    public override IReadOnlyList<ReplacementLimit> LimitAdvice =>
        [ReplacementLimit.Recalled(3, LimitReason.General, $"table-top chain: makers replace it at about 3 %")];

    // The law is set by roller chain drives. A table-top chain wears by what it carries, by glass, sugar and its strips.
    public override bool HasExpectedWear => false;

    public override IReadOnlyList<Phrase> Cautions =>
    [
        $"A conveyor may start from afar, and an inclined one may run back: secure it against both.",
        $"Many run dry, in water or in what their goods allow: ask before it is oiled.",
    ];

    public override SwapWork UsualSwap => new(1, 0.5, 1);
    public override Phrase PropAtSwap => $"support for the slack strand";

    public override Phrase ClosingStep =>
        $"Pull it through in its running direction, drive the pin in and check that no plate's edge stands up.";

    public override IReadOnlyList<CheckPoint> CheckPoints(bool lifts) => lifts
        ? HoistPoints.WithoutRollers
        :
        [
            CommonPoints.Cracked, CommonPoints.Stiff, HingedPlates, CommonPoints.Rust, CommonPoints.Teeth, CommonPoints.Line,
            CommonPoints.Sag(MayBeShortened),
        ];

    public override Phrase SprocketAdvice(double? elongationPercent = null, int? chainsOnTheseSprockets = null) =>
        Families.SprocketAdvice.OnTeeth(elongationPercent, chainsOnTheseSprockets);

    public override OilingOfLifting? OilingWhenLifting => null;
    public override double? OilTablePitchMm(double pitchMm) => null;
    public override Sourced OiledByHandHours => OilIntervals.OfSlowChains;

    // Where it is oiled at all, as a conveyor is.
    public override OilGrade? OilFor(Temperature ambient) => OilGrade.ForConveyor(ambient);
    public override ChainCut Cut(int pitches) => ChainCut.Whole(pitches);

    private static CheckPoint HingedPlates { get; } = new(
        InspectionPoint.PlateWear, $"Plates are worn thin, cupped or notched by the strips, or their edges stand up",
        $"Replace the chain; renew the strips and look for broken glass in the guides.", CommonPoints.Practice);
}
