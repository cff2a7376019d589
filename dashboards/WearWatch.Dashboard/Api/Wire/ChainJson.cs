using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A chain in the list, with its newest forecast.</summary>
internal sealed record ChainJson
{
    public required string Chain { get; init; }

    public required string Line { get; init; }

    public required string Position { get; init; }

    public required string ChainType { get; init; }

    public required string Family { get; init; }

    public required string Condition { get; init; }

    public required double? ElongationPct { get; init; }

    [JsonPropertyName("rate_pct_per_1000h")]
    public required double? RatePctPer1000h { get; init; }

    public required double? LimitPct { get; init; }

    public required string? LimitReason { get; init; }

    /// <summary>What reaches its limit first and gives the date, such as <c>pin diameter</c>; null for the length.</summary>
    public required string? LimitedBy { get; init; }

    public required DateTimeOffset? EarlyDate { get; init; }

    /// <summary>The day by which it is shortened, else tensioned anew; null where neither is in sight.</summary>
    public required DateTimeOffset? TensionBy { get; init; }

    public required DateTimeOffset? NextOilingAt { get; init; }

    /// <summary>From when it is out of use, of a chain that lifts or holds a load; null while that is not in sight.</summary>
    public required DateTimeOffset? OutOfUseBy { get; init; }

    /// <summary>When the shutdown begins in which its swap is planned; null when none is.</summary>
    public required DateTimeOffset? PlannedSwap { get; init; }

    public required DateTimeOffset? LastReadingAt { get; init; }

    /// <summary>What stands against the use of a chain that lifts or holds a load; null for any other.</summary>
    public required LiftingNowJson? Lifting { get; init; }
}
