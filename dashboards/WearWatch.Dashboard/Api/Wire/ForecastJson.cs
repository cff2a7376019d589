using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// A chain's newest forecast. The remaining hours count from its last reading: at 5, 50 and 95 %, and at 1, 2, ... 99 %; null is
/// beyond the horizon: no upper limit yet.
/// </summary>
internal sealed record ForecastJson(
    string Chain, DateTimeOffset MadeAt, string Model, int ReadingsUsed, string Condition, double? ElongationPct,
    double? ElongationSdPct,
    [property: JsonPropertyName("rate_pct_per_1000h")]
        double RatePctPer1000h, double LimitPct, string LimitReason, string LimitSource,
    double ProbabilityPassed, double HoursAtLastReading, double HoursNow,
    [property: JsonPropertyName("remaining_h_p05")] double? RemainingHP05, [property: JsonPropertyName("remaining_h_p50")]
        double? RemainingHP50,
    [property: JsonPropertyName("remaining_h_p95")] double? RemainingHP95, IReadOnlyList<double?> RemainingHPercentiles,
    DateTimeOffset? EarlyDate, DateTimeOffset? MiddleDate, DateTimeOffset? LateDate, DateTimeOffset? NextOilingAt);
