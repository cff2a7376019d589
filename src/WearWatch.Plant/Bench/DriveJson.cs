using System.Text.Json.Serialization;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Bench;

/// <summary>What a drive does to its chain. What needs an input that was not told is null.</summary>
public sealed record DriveJson
{
    /// <summary>The chain type; null when only its pitch was told.</summary>
    public required string? ChainType { get; init; }

    /// <summary>Pitch in millimetres.</summary>
    public required double PitchMm { get; init; }

    /// <summary>Strands on common pins.</summary>
    public required int Strands { get; init; }

    /// <summary>Pitches of the whole chain.</summary>
    public required int Pitches { get; init; }

    /// <summary>The pitches that the centre distance asked for, before rounding to an even number.</summary>
    public required double? ExactPitches { get; init; }

    /// <summary>Centre distance in millimetres.</summary>
    public required double CentreDistanceMm { get; init; }

    /// <summary>Pitch diameter of the driving sprocket in millimetres.</summary>
    public required double PitchDiameterMm { get; init; }

    /// <summary>Pitch diameter of the driven sprocket in millimetres.</summary>
    public required double DrivenPitchDiameterMm { get; init; }

    /// <summary>Revolutions a minute of the driving sprocket.</summary>
    public required double Rpm { get; init; }

    /// <summary>Mean speed of the chain in metres a second.</summary>
    [JsonPropertyName("speed_m_s")]
    public required double SpeedMPerS { get; init; }

    /// <summary>Pull from the power in newtons.</summary>
    public required double PullN { get; init; }

    /// <summary>Pull from the chain's own mass on its round way in newtons.</summary>
    public required double? CentrifugalPullN { get; init; }

    /// <summary>Tensile strength over both pulls.</summary>
    public required double? SafetyFactor { get; init; }

    /// <summary>Pressure in the joint in newtons a square millimetre.</summary>
    [JsonPropertyName("bearing_pressure_n_mm2")]
    public required double? BearingPressureNPerMm2 { get; init; }

    /// <summary>Times an hour that the whole chain goes round.</summary>
    public required double LoopsPerH { get; init; }

    /// <summary>Times an hour that a joint bends.</summary>
    public required double ArticulationsPerH { get; init; }

    /// <summary>How far a joint slips under load in an hour, in metres.</summary>
    public required double? LoadedSlipMPerH { get; init; }

    /// <summary>By how much the chain's speed swings, in percent.</summary>
    public required double SpeedVariationPct { get; init; }

    /// <summary>The classic rating.</summary>
    public required RatingJson Rating { get; init; }

    /// <summary>The power asked for as a share of what the chain may carry; null where that is not known.</summary>
    public required double? RelativeLoad { get; init; }

    /// <summary>From what the relative load was computed, or why it is not known.</summary>
    public required Phrase RelativeLoadBasis { get; init; }

    /// <summary>Why the pull is more than a drive is usually laid out for; empty where it is not.</summary>
    public required Phrase PullWarning { get; init; }

    /// <summary>Chains that carry the power by the classic rating.</summary>
    public required IReadOnlyList<RatedChainJson> Alternatives { get; init; }

    /// <summary>How it has to be oiled.</summary>
    public required OilJson Oil { get; init; }

    /// <summary>What wear to expect; null when pin or joint area is not known.</summary>
    public required ExpectedWearJson? ExpectedWear { get; init; }

    /// <summary>The elongation in percent at which the chain is to be replaced.</summary>
    public required double LimitPct { get; init; }

    /// <summary>Why there, as a word of the files.</summary>
    public required string LimitReason { get; init; }

    /// <summary>Whether it lifts or holds a load.</summary>
    public required bool HoldsLoad { get; init; }

    /// <summary>What to remember before it is touched, and what no figure says.</summary>
    public required IReadOnlyList<Phrase> Caution { get; init; }

    /// <summary>The values of the chain type that were recalled, not read.</summary>
    public required IReadOnlyList<string> FromMemory { get; init; }

    /// <summary>The wire form of a calculation.</summary>
    public static DriveJson Of(DriveCalculation worked)
    {
        var (drive, figures) = (worked.Drive, worked.Figures);
        return new DriveJson
        {
            ChainType = worked.Type?.Designation,
            PitchMm = drive.PitchMm,
            Strands = drive.Strands,
            Pitches = drive.Pitches,
            ExactPitches = worked.ExactPitches,
            CentreDistanceMm = figures.CentreDistanceMm,
            PitchDiameterMm = figures.PitchDiameterMm,
            DrivenPitchDiameterMm = figures.DrivenPitchDiameterMm,
            Rpm = drive.Rpm,
            SpeedMPerS = figures.Speed.MetresPerSecond,
            PullN = figures.Pull.Newtons,
            CentrifugalPullN = figures.CentrifugalPull?.Newtons,
            SafetyFactor = figures.SafetyFactor,
            BearingPressureNPerMm2 = figures.BearingPressureNewtonsPerMm2,
            LoopsPerH = figures.LoopsPerHour,
            RelativeLoad = worked.RelativeLoad.Share,
            RelativeLoadBasis = worked.RelativeLoad.Basis,
            PullWarning = figures.PullWarning,
            ArticulationsPerH = figures.ArticulationsPerHour,
            LoadedSlipMPerH = figures.LoadedSlipMetresPerHour,
            SpeedVariationPct = figures.SpeedVariationPercent,
            Rating = RatingJson.Of(worked.Rating),
            Alternatives = [.. worked.Alternatives.Select(c => new RatedChainJson(
                c.Type.Designation, c.Rated.Kilowatts, c.Speed.MetresPerSecond, FileWords.Of(c.OilFeed.Kind)))],
            Oil = OilJson.Of(worked),
            ExpectedWear = ExpectedWearJson.Of(worked),
            LimitPct = worked.Limits.Governing.Percent,
            LimitReason = FileWords.Of(worked.Limits.Governing.Reason),
            HoldsLoad = worked.HoldsLoad,
            Caution = worked.Cautions,
            FromMemory = worked.FromMemory,
        };
    }
}
