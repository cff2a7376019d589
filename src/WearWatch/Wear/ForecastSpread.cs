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

    private static double Stretched(double hours, double middle, double exponent) => hours is > 0 and < WearForecast.HorizonHours
        ? Math.Min(middle * Math.Pow(hours / middle, exponent), WearForecast.HorizonHours)
        : hours;
}
