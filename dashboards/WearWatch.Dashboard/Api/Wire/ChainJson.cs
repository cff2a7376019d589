using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A chain in the list, with its newest forecast.</summary>
internal sealed record ChainJson(
    string Chain, string Line, string Position, string ChainType, string Family, string Condition, double? ElongationPct,
    [property: JsonPropertyName("rate_pct_per_1000h")] double? RatePctPer1000h,
    double? LimitPct, string? LimitReason, DateTimeOffset? EarlyDate, DateTimeOffset? NextOilingAt,
    DateTimeOffset? LastReadingAt);
