using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Drives;

/// <summary>What follows from a drive's geometry, speed and power. What needs an input that is not known is null.</summary>
public sealed record DriveFigures
{
    /// <summary>
    /// A pull above this share of the tensile strength no chain may run with: a sixth at most in service,
    /// docs/references.md [43].
    /// </summary>
    public const double LargestPullShare = 1.0 / 6;

    /// <summary>Above this share a drive is warned of: a seventh is what drives are laid out for. Common practice.</summary>
    public const double UsualPullShare = 1.0 / 7;

    /// <summary>
    /// Why the pull is more than a drive is usually laid out for; nothing where it is not, or that is not known.
    /// </summary>
    public required Phrase PullWarning { get; init; }

    /// <summary>Mean speed of the chain: <c>v = z n p/60,000</c> m/s.</summary>
    public required Speed Speed { get; init; }

    /// <summary>Pull from the power: <c>F = P/v</c>. Source: docs/references.md [35].</summary>
    public required Force Pull { get; init; }

    /// <summary>Pull from the chain's own mass on its round way: <c>q v^2</c>. From memory.</summary>
    public Force? CentrifugalPull { get; init; }

    /// <summary>Tensile strength over pull and centrifugal pull.</summary>
    public double? SafetyFactor { get; init; }

    /// <summary>Pressure in the joint in newtons a square millimetre: <c>pr = (F + Fc)/A</c>.</summary>
    public double? BearingPressureNewtonsPerMm2 { get; init; }

    /// <summary>Centre distance in millimetres.</summary>
    public required double CentreDistanceMm { get; init; }

    /// <summary>Pitch diameter of the driving sprocket in millimetres.</summary>
    public required double PitchDiameterMm { get; init; }

    /// <summary>Pitch diameter of the driven sprocket in millimetres.</summary>
    public required double DrivenPitchDiameterMm { get; init; }

    /// <summary>Times an hour that the whole chain goes round: <c>60 n z/X</c>.</summary>
    public required double LoopsPerHour { get; init; }

    /// <summary>
    /// Times an hour that a joint bends: twice at each wheel in every loop, at two sprockets and at every idler and third shaft.
    /// </summary>
    public required double ArticulationsPerHour { get; init; }

    /// <summary>Way that a pin slips under load, in metres an hour: <c>pi d (1/z1 + 1/z2)</c> in every loop.</summary>
    /// <remarks>
    /// At each sprocket one of the two bends is on the tight side, the other under the slack side's small pull.
    /// </remarks>
    public double? LoadedSlipMetresPerHour { get; init; }

    /// <summary>By how much the chain's speed swings, in percent.</summary>
    public required double SpeedVariationPercent { get; init; }

    /// <summary>Works a drive out, or says why it cannot be.</summary>
    public static DriveOutcome Of(ChainDrive drive)
    {
        if (Wrong(drive) is { } wrong) return wrong;
        if (ChainLoop.CentrePitches(drive.Teeth, drive.DrivenTeeth, drive.Pitches) is not { } centre
            || !SprocketsClear(drive, centre))
            return new DriveOutcome.Refused("pitches",
                $"{drive.Pitches} pitches are too few: sprockets of {drive.Teeth} and {drive.DrivenTeeth} teeth would touch.");

        var speed = new Speed(drive.Teeth * drive.Rpm * drive.PitchMm / 60_000);
        var pull = new Force(drive.Power.Watts / speed.MetresPerSecond);
        if (drive.TensileKilonewtons is { } tensile && pull.Kilonewtons > LargestPullShare * tensile)
            return new DriveOutcome.Refused("power", $"{drive.Power.Kilowatts:0.#} kW at {speed.MetresPerSecond:0.####} m/s is "
                + $"a pull of {pull.Kilonewtons:0.#} kN, "
                + $"more than a sixth of the chain's {tensile:0.#} kN. "
                + $"These are figures of two different machines, or the chain is too small.");

        Force? centrifugal = drive.KilogramsPerMetre is { } q
            ? new Force(q * speed.MetresPerSecond * speed.MetresPerSecond)
            : null;
        var totalNewtons = pull.Newtons + (centrifugal?.Newtons ?? 0);
        var loopsPerHour = 60 * drive.Rpm * drive.Teeth / drive.Pitches;
        return new DriveOutcome.Worked(new DriveFigures
        {
            Speed = speed,
            Pull = pull,
            CentrifugalPull = centrifugal,
            SafetyFactor = 1000 * drive.TensileKilonewtons / totalNewtons,
            BearingPressureNewtonsPerMm2 = totalNewtons / drive.JointAreaMm2,
            CentreDistanceMm = centre * drive.PitchMm,
            PitchDiameterMm = Sprocket.PitchDiameterMm(drive.PitchMm, drive.Teeth),
            DrivenPitchDiameterMm = Sprocket.PitchDiameterMm(drive.PitchMm, drive.DrivenTeeth),
            PullWarning = Warning(drive, pull),
            LoopsPerHour = loopsPerHour,
            ArticulationsPerHour = 2 * (2 + drive.Idlers) * loopsPerHour,
            LoadedSlipMetresPerHour = drive.PinMm is { } pin
                ? loopsPerHour * (Sprocket.SlipMm(pin, drive.Teeth) + Sprocket.SlipMm(pin, drive.DrivenTeeth)) / 1000
                : null,
            SpeedVariationPercent = Sprocket.SpeedVariationPercent(Math.Min(drive.Teeth, drive.DrivenTeeth)),
        });
    }

    private static DriveOutcome.Refused? Wrong(ChainDrive drive)
    {
        if (!(drive.PitchMm > 0 && double.IsFinite(drive.PitchMm))) return new("pitch_mm", $"The pitch must be above zero.");
        if (Math.Min(drive.Teeth, drive.DrivenTeeth) < 5 || Math.Max(drive.Teeth, drive.DrivenTeeth) > 1000)
            return new("teeth", $"A sprocket has 5 to 1,000 teeth.");
        if (!(drive.Rpm > 0 && double.IsFinite(drive.Rpm))) return new("rpm", $"The speed must be above zero.");
        if (!(drive.Power.Watts >= 0 && double.IsFinite(drive.Power.Watts)))
            return new("power", $"The power must not be negative.");
        if (drive.Strands < 1) return new("strands", $"A chain has at least one strand.");
        return drive.Pitches < 1 ? new("pitches", $"The chain must have pitches.") : null;
    }

    private static Phrase Warning(ChainDrive drive, Force pull) =>
        drive.TensileKilonewtons is { } tensile && pull.Kilonewtons > UsualPullShare * tensile
            ? $"The pull of {pull.Kilonewtons:0.#} kN is more than a seventh of the chain's {tensile:0.#} kN: more than a drive "
                + $"is usually laid out for. A sixth is the most."
            : Phrase.None;

    private static bool SprocketsClear(ChainDrive drive, double centrePitches) =>
        2 * centrePitches > Sprocket.PitchDiameterMm(1, drive.Teeth) + Sprocket.PitchDiameterMm(1, drive.DrivenTeeth);
}
