using MathNet.Numerics.Distributions;
using WearWatch.Wear;

namespace WearWatch.Lives;

/// <summary>Finds forecasts that have drifted out of calibration, and the spread that brings them back.</summary>
/// <remarks>
/// <para>Looked at are the newest 100 lives that ended, each with the forecast that stood at half of it. Gate: the count of 90 %
/// intervals that held is below or above what chance lets happen once in a thousand looks (exact binomial tails). Looked at after
/// every life, the gate opens by chance for 2 of 100 sound plants within 300 lives, and 70 lives (in the middle) after the true
/// coverage has fallen to 75 %.</para>
/// <para>Spread: each side by split conformal prediction. A forecast's early end holds up to the exponent
/// <c>ln(m/T)/ln(m/h5)</c>, its late end up to <c>ln(T/m)/ln(h95/m)</c> (T the true hours left); the exponent in use is the
/// <c>ceil(0.95 (n+1))</c>-th smallest of n, so that a further life is missed on each side at most one time in twenty, whatever
/// the law of the errors. Source: docs/references.md [62].</para>
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
    private const double LeastExponent = 0.5;
    private const double MostExponent = 4;
    private const double Side = 0.95;

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
        new(Conformal(asMade.Select(EarlyExponent)), Conformal(asMade.Select(LateExponent)));

    private static bool IsChance(ObservedShare held)
    {
        var binomial = new Binomial(Stated, held.Of);
        return binomial.CumulativeDistribution(held.Hits) >= Surprise
            && 1 - binomial.CumulativeDistribution(held.Hits - 1) >= Surprise;
    }

    /// <summary>The exponent up to which the early end holds; one that had been passed always does.</summary>
    private static double EarlyExponent(ScoredForecast made)
    {
        var (middle, early) = (made.Forecast!.MiddleHours!.Value, made.Forecast.EarlyHours!.Value);
        return early > 0 && early < middle ? Math.Log(middle / TrueHoursLeft(made)) / Math.Log(middle / early) : 0;
    }

    /// <summary>
    /// The exponent up to which the late end holds: any, where there is no end; none that would do, where all had been passed.
    /// </summary>
    private static double LateExponent(ScoredForecast made)
    {
        var (middle, late) = (made.Forecast!.MiddleHours!.Value, made.Forecast.LateHours);
        if (late is null) return 0;
        return middle > 0 && late > middle
            ? Math.Log(TrueHoursLeft(made) / middle) / Math.Log(late.Value / middle)
            : MostExponent;
    }

    private static double Conformal(IEnumerable<double> exponents)
    {
        double[] sorted = [.. exponents.Order()];
        var place = Math.Min((int)Math.Ceiling(Side * (sorted.Length + 1)), sorted.Length);
        return Math.Clamp(sorted[place - 1], LeastExponent, MostExponent);
    }

    private static double TrueHoursLeft(ScoredForecast forecast) => forecast.LifeHours - forecast.LastReadingHours;
}
