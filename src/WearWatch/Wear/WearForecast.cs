namespace WearWatch.Wear;

/// <summary>The distribution of the running hours left until a chain reaches its limit.</summary>
/// <remarks>
/// Hours count from the chain's last reading. A quantile beyond <see cref="HorizonHours"/> is null: no upper limit yet.
/// </remarks>
public sealed record WearForecast
{
    /// <summary>Farther than this nobody plans and the model says nothing.</summary>
    public const double HorizonHours = 1_000_000;

    /// <summary>The limit in percent that it is about.</summary>
    public required double LimitPercent { get; init; }

    /// <summary>Probability that the limit has been passed already.</summary>
    public required double ProbabilityPassed { get; init; }

    /// <summary>Quantiles of the hours left at 1, 2, ... 99 %, in ascending order; zero where it has been passed.</summary>
    public required IReadOnlyList<double> PercentilesHours { get; init; }

    /// <summary>The early end: nineteen of twenty such chains last longer. The planner's figure.</summary>
    public double? EarlyHours => Quantile(5);

    /// <summary>The middle: half of such chains last longer.</summary>
    public double? MiddleHours => Quantile(50);

    /// <summary>The late end: one of twenty such chains lasts longer; null when there is no upper limit yet.</summary>
    public double? LateHours => Quantile(95);

    /// <summary>The hours left at a percentile, 1 to 99; null beyond the horizon.</summary>
    public double? Quantile(int percent) => PercentilesHours[percent - 1] is var h && h < HorizonHours ? h : null;

    /// <summary>Probability that the limit is passed within so many running hours from the last reading.</summary>
    public double ProbabilityWithin(double hours)
    {
        if (hours <= 0) return ProbabilityPassed;
        var below = 0;
        while (below < PercentilesHours.Count && PercentilesHours[below] <= hours) below++;
        if (below == 0) return Math.Max(ProbabilityPassed, 0.01 * hours / PercentilesHours[0]);
        if (below == PercentilesHours.Count) return 0.99;
        var (low, high) = (PercentilesHours[below - 1], PercentilesHours[below]);
        return Math.Max(ProbabilityPassed, 0.01 * (below + (hours - low) / (high - low)));
    }
}
