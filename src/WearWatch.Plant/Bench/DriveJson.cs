using System.Text.Json.Serialization;
using WearWatch.Drives;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Bench;

/// <summary>
/// What a drive does to its chain; <c>from_memory</c> names the values of the chain type that were recalled, not read.
/// </summary>
public sealed record DriveJson(
    string? ChainType, double PitchMm, int Strands, int Pitches, double? ExactPitches, double CentreDistanceMm,
    double PitchDiameterMm,
    double DrivenPitchDiameterMm, double Rpm, [property: JsonPropertyName("speed_m_s")]
        double SpeedMPerS, double PullN, double? CentrifugalPullN, double? SafetyFactor,
    [property: JsonPropertyName("bearing_pressure_n_mm2")] double? BearingPressureNPerMm2, double LoopsPerH,
        double ArticulationsPerH, double? LoadedSlipMPerH, double SpeedVariationPct,
    RatingJson Rating, IReadOnlyList<RatedChainJson> Alternatives, OilJson Oil, ExpectedWearJson? ExpectedWear, double LimitPct,
    string LimitReason,
    IReadOnlyList<string> FromMemory)
{
    public static DriveJson Of(DriveCalculation sheet)
    {
        var (drive, figures, rating, feed) = (sheet.Drive, sheet.Figures, sheet.Rating, sheet.OilFeed);
        return new DriveJson(
            sheet.Type?.Designation, drive.PitchMm, drive.Strands, drive.Pitches, sheet.ExactPitches, figures.CentreDistanceMm,
            figures.PitchDiameterMm,
            figures.DrivenPitchDiameterMm, drive.Rpm, figures.Speed.MetresPerSecond, figures.Pull.Newtons,
            figures.CentrifugalPull?.Newtons,
            figures.SafetyFactor, figures.BearingPressureNewtonsPerMm2, figures.LoopsPerHour, figures.ArticulationsPerHour,
            figures.LoadedSlipMetresPerHour, figures.SpeedVariationPercent,
            new RatingJson(
                ClassicRating.Generation, rating.Rated?.Kilowatts, rating.Asked.Kilowatts, rating.ServiceFactor,
                rating.StrandFactor, rating.IsEnough, rating.Basis),
            [.. sheet.Alternatives.Select(c => new RatedChainJson(
                c.Type.Designation, c.Rated.Kilowatts, c.Speed.MetresPerSecond, FileWords.Of(c.OilFeed.Kind)))],
            new OilJson(
                FileWords.Of(feed.Kind), feed.ManualUpTo.MetresPerSecond, feed.BathUpTo.MetresPerSecond, feed.Source,
                feed.IsVerified, sheet.OilIsEnough,
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
public sealed record RatedChainJson(string ChainType, double RatedKw, [property: JsonPropertyName("speed_m_s")]
    double SpeedMPerS, string OilFeed);

/// <summary>How it has to be oiled.</summary>
public sealed record OilJson(
    string Feed, [property: JsonPropertyName("by_hand_up_to_m_s")]
        double ByHandUpToMPerS, [property: JsonPropertyName("bath_up_to_m_s")]
            double BathUpToMPerS, string Source, bool Verified, bool? FittedIsEnough, string? Sae, string? IsoVg,
            string? GradeSource);

/// <summary>The expected wear: one of twenty such drives lies below the slow rate, one above the fast one.</summary>
public sealed record ExpectedWearJson(
    [property: JsonPropertyName("rate_p05_pct_per_1000h")] double RateP05PctPer1000H,
        [property: JsonPropertyName("rate_p50_pct_per_1000h")]
            double RateP50PctPer1000H, [property: JsonPropertyName("rate_p95_pct_per_1000h")]
                double RateP95PctPer1000H, [property: JsonPropertyName("to_limit_h_p05")]
                    double HoursToLimitP05, [property: JsonPropertyName("to_limit_h_p50")]
                        double HoursToLimitP50, [property: JsonPropertyName("to_limit_h_p95")] double HoursToLimitP95,
    string Source);
