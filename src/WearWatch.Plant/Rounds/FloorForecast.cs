using WearWatch.Wear;

namespace WearWatch.Plant.Rounds;

/// <summary>What of a kept forecast the floor needs.</summary>
public sealed record FloorForecast
{
    /// <summary>Elongation at the last reading in percent; null before the first.</summary>
    public required double? ElongationPct { get; init; }

    /// <summary>Its standard deviation in percent; null before the first reading.</summary>
    public required double? ElongationSdPct { get; init; }

    /// <summary>Wear rate in percent per 1,000 running hours.</summary>
    public required double RatePctPer1000H { get; init; }

    /// <summary>Standard deviation of the rate's natural logarithm.</summary>
    public required double LogRateSd { get; init; }

    /// <summary>Running hours of the fitted chain at the last reading.</summary>
    public required double HoursAtLastReading { get; init; }

    /// <summary>Its running hours when the forecast was made.</summary>
    public required double HoursNow { get; init; }

    /// <summary>The limit in percent.</summary>
    public required double LimitPct { get; init; }

    /// <summary>The date that nineteen of twenty such chains outlast; null when none is near.</summary>
    public required DateTimeOffset? EarlyDate { get; init; }

    /// <summary>What comes to its limit then, where that is not the length; null for the length.</summary>
    public Phrase? LimitedBy { get; init; }

    /// <summary>The chain's condition.</summary>
    public required Condition Condition { get; init; }

    /// <summary>Running hours left that nineteen of twenty such chains outlast; null as the date.</summary>
    public required double? EarlyHours { get; init; }

    /// <summary>Running hours left that half of such chains outlast; null as the date.</summary>
    public required double? MiddleHours { get; init; }

    /// <summary>From when it is out of use, of a chain that lifts or holds a load; null while that is not in sight.</summary>
    public DateTimeOffset? OutOfUseBy { get; init; }

    /// <summary>When it is to be shortened at the earliest; null where it is not, or that is not in sight.</summary>
    public DateTimeOffset? ShortenFrom { get; init; }

    /// <summary>How many pitches go then.</summary>
    public int? ShortenPitches { get; init; }

    /// <summary>When it is to be tensioned anew, by its slack; null where that is not in sight.</summary>
    public DateTimeOffset? TensionFrom { get; init; }

    /// <summary>When it is to be oiled next; null when nothing is foreseen.</summary>
    public required DateTimeOffset? NextOilingAt { get; init; }
}
