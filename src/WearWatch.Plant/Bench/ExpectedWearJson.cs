using System.Text.Json.Serialization;

namespace WearWatch.Plant.Bench;

/// <summary>The expected wear: one of twenty such drives lies below the slow rate, one above the fast one.</summary>
public sealed record ExpectedWearJson
{
    /// <summary>The slow rate, in percent per 1,000 running hours.</summary>
    [JsonPropertyName("rate_p05_pct_per_1000h")]
    public required double RateP05PctPer1000H { get; init; }

    /// <summary>The middle rate, in percent per 1,000 running hours.</summary>
    [JsonPropertyName("rate_p50_pct_per_1000h")]
    public required double RateP50PctPer1000H { get; init; }

    /// <summary>The fast rate, in percent per 1,000 running hours.</summary>
    [JsonPropertyName("rate_p95_pct_per_1000h")]
    public required double RateP95PctPer1000H { get; init; }

    /// <summary>Running hours from new to the limit at the fast rate.</summary>
    [JsonPropertyName("to_limit_h_p05")]
    public required double HoursToLimitP05 { get; init; }

    /// <summary>Running hours from new to the limit at the middle rate.</summary>
    [JsonPropertyName("to_limit_h_p50")]
    public required double HoursToLimitP50 { get; init; }

    /// <summary>Running hours from new to the limit at the slow rate.</summary>
    [JsonPropertyName("to_limit_h_p95")]
    public required double HoursToLimitP95 { get; init; }

    /// <summary>What the rates rest on.</summary>
    public required Phrase Source { get; init; }

    /// <summary>The wire form of what a calculation expects; null when pin or joint area is not known.</summary>
    public static ExpectedWearJson? Of(DriveCalculation worked) =>
        worked is { ExpectedRate: { } rate, ExpectedHours: { } hours, Prior: { } prior }
            ? new()
            {
                RateP05PctPer1000H = rate.Slow,
                RateP50PctPer1000H = rate.Middle,
                RateP95PctPer1000H = rate.Fast,
                HoursToLimitP05 = hours.Early,
                HoursToLimitP50 = hours.Middle,
                HoursToLimitP95 = hours.Late,
                Source = prior.Source,
            }
            : null;
}
