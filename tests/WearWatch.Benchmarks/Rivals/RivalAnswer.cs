using WearWatch.Trends;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Rivals;

/// <summary>
/// When a chain reaches a limit, in running hours since fitting; null where a method has no answer, infinite without an upper
/// limit.
/// </summary>
internal readonly record struct RivalAnswer(double? Early, double? Middle, double? Late)
{
    /// <summary>Each end is exceeded with 5 %.</summary>
    public const double Confidence = 0.90;

    public static RivalAnswer None => default;

    /// <summary>Where a line reaches the limit, with Fieller's interval; docs/references.md [17].</summary>
    public static RivalAnswer Of(StraightLine line, double limitPercent)
    {
        if (!(line.Slope > 0)) return None;
        var middle = (limitPercent - line.Intercept) / line.Slope;
        if (line.DegreesOfFreedom < 1) return new(null, middle, null);
        return InversePrediction.Of(line, limitPercent, Confidence) switch
        {
            InversePrediction.Between b => new(b.Lower, middle, b.Upper),
            InversePrediction.NoUpperLimit n => new(n.Lower, middle, double.PositiveInfinity),
            _ => new(null, middle, null),
        };
    }

    /// <summary>The quantiles of a forecast, counted from hours since fitting.</summary>
    public static RivalAnswer Of(WearForecast forecast, double lastReadingHours) => new(
        lastReadingHours + forecast.EarlyHours, lastReadingHours + forecast.MiddleHours,
        forecast.LateHours is { } late ? lastReadingHours + late : double.PositiveInfinity);
}
