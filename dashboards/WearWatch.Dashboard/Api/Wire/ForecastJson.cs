using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// A chain's newest forecast. The remaining hours count from its last reading: at 5, 50 and 95 %, and at 1, 2, ... 99 %; null is
/// beyond the horizon: no upper limit yet.
/// </summary>
internal sealed record ForecastJson
{
    public required string Chain { get; init; }

    public required DateTimeOffset MadeAt { get; init; }

    public required string Model { get; init; }

    public required int ReadingsUsed { get; init; }

    public required string Condition { get; init; }

    public required double? ElongationPct { get; init; }

    public required double? ElongationSdPct { get; init; }

    [JsonPropertyName("rate_pct_per_1000h")]
    public required double RatePctPer1000h { get; init; }

    public required double LimitPct { get; init; }

    public required string LimitReason { get; init; }

    public required string LimitSource { get; init; }

    public required double ProbabilityPassed { get; init; }

    public required double HoursAtLastReading { get; init; }

    public required double HoursNow { get; init; }

    [JsonPropertyName("remaining_h_p05")]
    public required double? RemainingHP05 { get; init; }

    [JsonPropertyName("remaining_h_p50")]
    public required double? RemainingHP50 { get; init; }

    [JsonPropertyName("remaining_h_p95")]
    public required double? RemainingHP95 { get; init; }

    public required IReadOnlyList<double?> RemainingHPercentiles { get; init; }

    /// <summary>
    /// What reaches its limit first and gives the dates, such as <c>pin diameter</c>; null for the length. The remaining hours
    /// are always those of the length.
    /// </summary>
    public required string? LimitedBy { get; init; }

    public required DateTimeOffset? EarlyDate { get; init; }

    public required DateTimeOffset? MiddleDate { get; init; }

    public required DateTimeOffset? LateDate { get; init; }

    public required DateTimeOffset? NextOilingAt { get; init; }

    /// <summary>From when it is out of use, of a chain that lifts or holds a load; null while that is not in sight.</summary>
    public required DateTimeOffset? OutOfUseBy { get; init; }

    /// <summary>What stands against the use of a chain that lifts or holds a load; null for any other.</summary>
    public required LiftingNowJson? Lifting { get; init; }
}
