using WearWatch.Chains;
using WearWatch.Drives;
using WearWatch.Lubrication;
using WearWatch.Plant.Settings;
using WearWatch.Units;

namespace WearWatch.Plant.Bench;

/// <summary>Answers what a drive of two sprockets does to its chain.</summary>
/// <remarks>
/// Names: <c>type</c>, or <c>pitch_mm</c> with <c>strands</c>, <c>pin_mm</c>, <c>joint_area_mm2</c>, <c>tensile_kn</c>;
/// <c>teeth</c>,
/// <c>driven_teeth</c>; <c>rpm</c> or <c>speed</c>; <c>power</c>; <c>pitches</c> or <c>centre</c> (in <c>unit</c>);
/// <c>mass_kg_m</c>; <c>idlers</c>; <c>carried_kg</c>, <c>friction</c>;
/// <c>load</c>, <c>mover</c>; <c>lubrication</c>, <c>ambient_c</c>; and what <see cref="LimitBench"/> knows.
/// </remarks>
public static class DriveBench
{
    private const double MostRpm = 20_000;

    /// <summary>What the drive does to its chain, or what of the question cannot be read.</summary>
    public static BenchAnswer<DriveCalculation> Answer(Asked asked)
    {
        var type = asked.Type("type");
        var pitchMm = asked.Number("pitch_mm", 0.1, 2000) ?? type?.PitchMm?.Value;
        if (pitchMm is null && !asked.Told("type")) asked.Refuse("pitch_mm", $"Give the chain type or the pitch.");
        var teeth = Wanted(asked, "teeth", $"How many teeth has the driving sprocket?");
        var driven = Wanted(asked, "driven_teeth", $"How many teeth has the driven sprocket?");
        var power = asked.Quantity("power", QuantityKind.Power);
        if (!asked.Told("power")) asked.Refuse("power", $"Which power does it transmit? 30 kW or 40 hp, say.");
        if (!asked.Told("rpm") && !asked.Told("speed"))
            asked.Refuse("rpm", $"Give the turns a minute of the driving sprocket, or the speed of the chain.");
        if (!asked.Told("pitches") && !asked.Told("centre"))
            asked.Refuse("pitches", $"Give the length of the chain in pitches, or the centre distance.");
        if (asked.Wrong.Count > 0) return Refused(asked);

        var rpm = asked.Number("rpm", 0.001, MostRpm)
            ?? asked.Quantity("speed", QuantityKind.Speed) * 60_000 / (teeth!.Value * pitchMm!.Value);
        var exact = asked.Length("centre", asked.Unit("unit")) is { } centre && !asked.Told("pitches")
            ? ChainLoop.LengthPitches(teeth!.Value, driven!.Value, centre.Millimetres / pitchMm!.Value)
            : (double?)null;
        var pitches = asked.Whole("pitches", 4, 100_000)
            ?? (exact is < 100_000 and { } length ? ChainLoop.EvenPitches(length) : null);
        if (pitches is null && asked.Wrong.Count == 0) asked.Refuse("centre", $"No chain is so long; is the unit right?");
        if (asked.Wrong.Count > 0 || rpm is null) return Refused(asked);

        var drive = Drive(asked, type, pitchMm!.Value) with
        {
            Teeth = teeth!.Value,
            DrivenTeeth = driven!.Value,
            Rpm = rpm.Value,
            Power = new Power(power!.Value),
            Pitches = pitches!.Value,
        };
        return asked.Wrong.Count > 0 ? Refused(asked) : Worked(asked, type, drive, exact);
    }

    private static ChainDrive Drive(Asked asked, ChainType? type, double pitchMm)
    {
        var blank = new ChainDrive { PitchMm = pitchMm, Teeth = 0, DrivenTeeth = 0, Rpm = 0, Power = default, Pitches = 0 };
        var drive = type is null ? blank : blank.With(type);
        return drive with
        {
            PitchMm = pitchMm,
            Strands = asked.Whole("strands", 1, 12) is { } strands && type is null ? strands : drive.Strands,
            PinMm = asked.Number("pin_mm", 0.1, 1000) ?? drive.PinMm,
            JointAreaMm2 = asked.Number("joint_area_mm2", 0.1, 1e6) ?? drive.JointAreaMm2,
            TensileKilonewtons = asked.Number("tensile_kn", 0.01, 1e5) ?? drive.TensileKilonewtons,
            Idlers = asked.Whole("idlers", 0, 50) ?? 0,
            KilogramsPerMetre = asked.Number("mass_kg_m", 0.001, 1e4),
        };
    }

    private static BenchAnswer<DriveCalculation> Worked(Asked asked, ChainType? type, ChainDrive drive, double? exact)
    {
        var load = asked.Word<LoadKind>("load") ?? LoadKind.Smooth;
        var mover = asked.Word<PrimeMover>("mover") ?? PrimeMover.MotorOrTurbine;
        var lubrication = asked.Word<LubricationState>("lubrication");
        var ambient = asked.Number("ambient_c", -60, 200);
        var @case = LimitBench.Case(asked, type) with { ChainPitches = drive.Pitches, PitchMm = drive.PitchMm };
        if (asked.Wrong.Count > 0) return Refused(asked);
        switch (DriveFigures.Of(drive))
        {
            case DriveOutcome.Refused refused:
                return new BenchAnswer<DriveCalculation>.Refused([new Refusal(refused.Field, refused.Reason)]);
            case DriveOutcome.Worked worked:
                var family = @case.Family;
                // Drips on the slack side are for drives: of what lifts the joints are oiled while it is slack.
                var rating = DriveRating.Of(type, drive, RatingFactors.Service(load, mover));
                var relative = asked.Number("carried_kg", 0.001, 1e9) is { } carried
                    && asked.Number("friction", 0.001, 1) is { } friction
                    ? RelativeLoad.OfConveyor(carried, friction, drive.TensileKilonewtons)
                    : RelativeLoad.OfDrive(rating.Asked, rating.Rated);
                var feed = @case.Lifts ? null : OilFeed.For(family, drive.PitchMm, worked.Figures.Speed);
                return new BenchAnswer<DriveCalculation>.Answered(new DriveCalculation
                {
                    Type = type,
                    Drive = drive,
                    Figures = worked.Figures,
                    ExactPitches = exact,
                    Rating = rating,
                    RelativeLoad = relative,
                    Alternatives = @case.Lifts ? [] : DriveRating.Alternatives(drive, RatingFactors.Service(load, mover)),
                    OilFeed = feed,
                    OilIsEnough = lubrication is { } fitted ? feed?.IsEnough(fitted) : null,
                    OilGrade = ambient is { } celsius ? family.OilFor(new Temperature(celsius)) : null,
                    AmbientC = ambient,
                    Prior = family.HasExpectedWear && !@case.Lifts && ExpectedWear.Covers(relative)
                        ? ExpectedWear.Prior(worked.Figures, drive.PitchMm, lubrication)
                        : null,
                    Limits = LimitRules.For(@case),
                    HoldsLoad = @case.Lifts,
                    Cautions = Caution.For(family, @case.Lifts),
                });
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private static int? Wanted(Asked asked, string name, Phrase question)
    {
        if (!asked.Told(name)) asked.Refuse(name, question);
        return asked.Whole(name, 5, 1000);
    }

    private static BenchAnswer<DriveCalculation> Refused(Asked asked) => new BenchAnswer<DriveCalculation>.Refused(asked.Wrong);
}
