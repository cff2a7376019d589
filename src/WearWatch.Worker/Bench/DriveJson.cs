using WearWatch.Drives;
using WearWatch.Worker.Files;

namespace WearWatch.Worker.Bench;

/// <summary>What a drive does to its chain; <c>from_memory</c> names the values of the chain type that were recalled, not read.</summary>
public sealed record DriveJson(
    string? ChainType, double PitchMm, int Strands, int Pitches, double? ExactPitches, double CentreDistanceMm, double PitchDiameterMm,
    double DrivenPitchDiameterMm, double Rpm, double SpeedMPerS, double PullN, double? CentrifugalPullN, double? SafetyFactor,
    double? BearingPressureNPerMm2, double LoopsPerH, double ArticulationsPerH, double? LoadedSlipMPerH, double SpeedVariationPct,
    RatingJson Rating, IReadOnlyList<RatedChainJson> Alternatives, OilJson Oil, ExpectedWearJson? ExpectedWear, double LimitPct, string LimitReason,
    IReadOnlyList<string> FromMemory)
{
    public static DriveJson Of(DriveSheet sheet)
    {
        var (drive, figures, rating, feed) = (sheet.Drive, sheet.Figures, sheet.Rating, sheet.OilFeed);
        return new DriveJson(
            sheet.Type?.Designation, drive.PitchMm, drive.Strands, drive.Pitches, sheet.ExactPitches, figures.CentreDistanceMm, figures.PitchDiameterMm,
            figures.DrivenPitchDiameterMm, drive.Rpm, figures.Speed.MetresPerSecond, figures.Pull.Newtons, figures.CentrifugalPull?.Newtons,
            figures.SafetyFactor, figures.BearingPressureNewtonsPerMm2, figures.LoopsPerHour, figures.ArticulationsPerHour,
            figures.LoadedSlipMetresPerHour, figures.SpeedVariationPercent,
            new RatingJson(
                ClassicRating.Generation, rating.Rated?.Kilowatts, rating.Asked.Kilowatts, rating.ServiceFactor, rating.StrandFactor, rating.IsEnough, rating.Basis),
            [.. sheet.Alternatives.Select(c => new RatedChainJson(c.Type.Designation, c.Rated.Kilowatts, c.Speed.MetresPerSecond, FileWords.Of(c.OilFeed.Kind)))],
            new OilJson(
                FileWords.Of(feed.Kind), feed.ManualUpTo.MetresPerSecond, feed.BathUpTo.MetresPerSecond, feed.Source, feed.IsVerified, sheet.OilIsEnough,
                sheet.OilGrade?.Sae, sheet.OilGrade?.IsoVg, sheet.OilGrade?.Source),
            sheet is { ExpectedRate: { } rate, ExpectedHours: { } hours, Prior: { } prior }
                ? new ExpectedWearJson(rate.Slow, rate.Middle, rate.Fast, hours.Early, hours.Middle, hours.Late, prior.Source)
                : null,
            sheet.Limits.Governing.Percent, FileWords.Of(sheet.Limits.Governing.Reason), sheet.FromMemory);
    }
}

/// <summary>The classic rating.</summary>
public sealed record RatingJson(
    string Generation, double? RatedKw, double AskedKw, double ServiceFactor, double? StrandFactor, bool? IsEnough, string Basis);

/// <summary>A chain that carries the power by the classic rating.</summary>
public sealed record RatedChainJson(string ChainType, double RatedKw, double SpeedMPerS, string OilFeed);

/// <summary>How it has to be oiled.</summary>
public sealed record OilJson(
    string Feed, double ByHandUpToMPerS, double BathUpToMPerS, string Source, bool Verified, bool? FittedIsEnough, string? Sae, string? IsoVg, string? GradeSource);

/// <summary>The expected wear: one of twenty such drives lies below the slow rate, one above the fast one.</summary>
public sealed record ExpectedWearJson(
    double RateP05PctPer1000H, double RateP50PctPer1000H, double RateP95PctPer1000H, double HoursToLimitP05, double HoursToLimitP50, double HoursToLimitP95,
    string Source);
