using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// A chain's whole card. Sent to change it, it carries the revision from which the sender set out, who and why.
/// </summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record CardJson
{
    public string? Line { get; init; }

    public string? Position { get; init; }

    public string? ChainType { get; init; }

    public string? Family { get; init; }

    public double? PitchMm { get; init; }

    public int? Pitches { get; init; }

    public IReadOnlyList<int>? SprocketTeeth { get; init; }

    public DateTimeOffset? FittedAt { get; init; }

    public double? FittedCounterH { get; init; }

    /// <summary>The supplier's lot of the first recorded chain.</summary>
    public string? Lot { get; init; }

    public double? LimitPct { get; init; }

    public string? LimitSetReason { get; init; }

    public int? Strands { get; init; }

    public bool FixedCentres { get; init; }

    public bool RunsInParallel { get; init; }

    public bool Timing { get; init; }

    public bool Positioning { get; init; }

    public bool HighPerformance { get; init; }

    public bool Lifts { get; init; }

    public double? CentreDistanceMm { get; init; }

    public double? TakeUpTravelMm { get; init; }

    public double? LoadRel { get; init; }

    [JsonPropertyName("speed_m_s")]
    public double? SpeedMPerS { get; init; }

    public string? Lubrication { get; init; }

    public string? Dust { get; init; }

    public double? AmbientC { get; init; }

    public string? OilMethod { get; init; }

    public string? OilGrade { get; init; }

    public double? OilingIntervalH { get; init; }

    public double? OilingSurroundingsFactor { get; init; }

    public int? Revision { get; init; }

    public string? By { get; init; }

    public string? Why { get; init; }
}
