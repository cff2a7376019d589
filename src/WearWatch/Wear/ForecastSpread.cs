namespace WearWatch.Wear;

/// <summary>By how much a plant's forecasts are stretched or drawn together, so that they hold as often as they say.</summary>
/// <remarks>
/// A percentile h of the hours left becomes <c>m (h/m)^k</c>, m the middle: k is <see cref="Early"/> below the middle and
/// <see cref="Late"/> above it. The middle stays, the order of the percentiles too, and what has been passed or lies beyond the
/// horizon stays where it is.
/// </remarks>
/// <param name="Early">Exponent of the early side; above 1 the planner's date comes sooner.</param>
/// <param name="Late">Exponent of the late side; above 1 the late end comes later.</param>
public sealed record ForecastSpread(double Early, double Late)
{
    private const int Middle = 49;
    private const double LeastExponent = 0.5;
    private const double MostExponent = 4;
    private const double Side = 0.95;

    /// <summary>Forecasts as the track makes them.</summary>
    public static ForecastSpread AsMade { get; } = new(1, 1);

    /// <summary>A forecast with this spread.</summary>
    public WearForecast Apply(WearForecast forecast)
    {
        var middle = forecast.PercentilesHours[Middle];
        return this == AsMade || middle is not (> 0 and < WearForecast.HorizonHours)
            ? forecast
            : forecast with
            {
                PercentilesHours = [
                    .. forecast.PercentilesHours.Select((h, i) => Stretched(h, middle, i < Middle ? Early : Late))],
            };
    }

    /// <summary>The forecast that this spread was applied to.</summary>
    public WearForecast Undo(WearForecast forecast) => new ForecastSpread(1 / Early, 1 / Late).Apply(forecast);

    /// <summary>The spread with which forecasts would have held as stated, each side in 95 %.</summary>
    /// <remarks>
    /// Split conformal prediction: a forecast's early end holds up to the exponent <c>ln(m/T)/ln(m/h5)</c>, its late end up to
    /// <c>ln(T/m)/ln(h95/m)</c> (T the true hours left); the exponent is the <c>ceil(0.95 (n+1))</c>-th smallest of n. Source:
    /// docs/references.md [62].
    /// </remarks>
    /// <param name="made">Forecasts that name a middle, each with the hours that were truly left; at least one.</param>
    public static ForecastSpread Fit(IReadOnlyCollection<(WearForecast Forecast, double HoursLeft)> made) =>
        new(Conformal(made.Select(EarlyExponent)), Conformal(made.Select(LateExponent)));

    /// <summary>This spread, drawn towards none: a share of one is all of it, of zero none.</summary>
    public ForecastSpread Share(double share) => new(Math.Pow(Early, share), Math.Pow(Late, share));

    /// <summary>The exponent up to which the early end holds; one that had been passed always does.</summary>
    private static double EarlyExponent((WearForecast Forecast, double HoursLeft) made)
    {
        var (middle, early) = (made.Forecast.MiddleHours!.Value, made.Forecast.EarlyHours!.Value);
        return early > 0 && early < middle ? Math.Log(middle / made.HoursLeft) / Math.Log(middle / early) : 0;
    }

    /// <summary>
    /// The exponent up to which the late end holds: any, where there is no end; none that would do, where all had been passed.
    /// </summary>
    private static double LateExponent((WearForecast Forecast, double HoursLeft) made)
    {
        var (middle, late) = (made.Forecast.MiddleHours!.Value, made.Forecast.LateHours);
        if (late is null) return 0;
        return middle > 0 && late > middle
            ? Math.Log(made.HoursLeft / middle) / Math.Log(late.Value / middle)
            : MostExponent;
    }

    private static double Conformal(IEnumerable<double> exponents)
    {
        double[] sorted = [.. exponents.Order()];
        var place = Math.Min((int)Math.Ceiling(Side * (sorted.Length + 1)), sorted.Length);
        return Math.Clamp(sorted[place - 1], LeastExponent, MostExponent);
    }

    private static double Stretched(double hours, double middle, double exponent) => hours is > 0 and < WearForecast.HorizonHours
        ? Math.Min(middle * Math.Pow(hours / middle, exponent), WearForecast.HorizonHours)
        : hours;
}
