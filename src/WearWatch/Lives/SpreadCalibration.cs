using MathNet.Numerics.Distributions;
using WearWatch.Wear;

namespace WearWatch.Lives;

/// <summary>Finds forecasts that have drifted out of calibration, and the spread that brings them back.</summary>
/// <remarks>
/// <para>Looked at are the newest 100 lives that ended, each with the forecast that stood at half of it. Gate: the count of 90 %
/// intervals that held is below or above what chance lets happen once in a thousand looks (exact binomial tails). Looked at after
/// every life, the gate opens by chance for 2 of 100 sound plants within 300 lives, and 70 lives (in the middle) after the true
/// coverage has fallen to 75 %.</para>
/// <para>Spread: <see cref="ForecastSpread.Fit"/>, so that a further life is missed on each side at most one time in twenty,
/// whatever the law of the errors.</para>
/// </remarks>
public static class SpreadCalibration
{
    /// <summary>How often the interval is stated to hold.</summary>
    public const double Stated = 0.9;

    /// <summary>With fewer lives the 95 % quantile of a side is the largest error seen.</summary>
    public const int FewestLives = 40;

    /// <summary>Older lives speak of another time.</summary>
    public const int MostLives = 100;

    private const double Surprise = 0.001;

    /// <summary>Holds forecasts against what happened.</summary>
    /// <param name="asMade">
    /// The forecasts as the track made them, without any spread, by the end of their lives; the newest last.
    /// </param>
    /// <param name="inUse">The spread in use.</param>
    public static SpreadOutcome Of(IEnumerable<ScoredForecast> asMade, ForecastSpread inUse)
    {
        List<ScoredForecast> newest = [.. asMade.Where(f => f.Answered).TakeLast(MostLives)];
        if (newest.Count < FewestLives) return new SpreadOutcome.TooFewLives(newest.Count, FewestLives);
        var held = ObservedShare.In(newest, f => (f with { Forecast = inUse.Apply(f.Forecast!) }).Held90);
        return IsChance(held) ? new SpreadOutcome.Holds(held) : new SpreadOutcome.Drifted(held, Fit(newest));
    }

    /// <summary>The spread with which forecasts, all of them answered, would have held as stated.</summary>
    public static ForecastSpread Fit(IReadOnlyCollection<ScoredForecast> asMade) =>
        ForecastSpread.Fit([.. asMade.Select(f => (f.Forecast!, TrueHoursLeft(f)))]);

    private static bool IsChance(ObservedShare held)
    {
        var binomial = new Binomial(Stated, held.Of);
        return binomial.CumulativeDistribution(held.Hits) >= Surprise
            && 1 - binomial.CumulativeDistribution(held.Hits - 1) >= Surprise;
    }

    private static double TrueHoursLeft(ScoredForecast forecast) => forecast.LifeHours - forecast.LastReadingHours;
}
