using WearWatch.Wear;

namespace WearWatch.Storage.Rows;

/// <summary>
/// A spread that the plant's forecasts were given when they had drifted out of calibration. Rows are only ever added; the newest
/// is in use.
/// </summary>
public sealed class SpreadRow
{
    public int Id { get; init; }

    public DateTimeOffset MadeAt { get; init; }

    /// <summary>Lives that were looked at.</summary>
    public int Lives { get; init; }

    /// <summary>How many of their 90 % intervals had held.</summary>
    public int Held { get; init; }

    public double EarlyExponent { get; init; }

    public double LateExponent { get; init; }

    /// <summary>The spread as the domain knows it.</summary>
    public ForecastSpread ToSpread() => new(EarlyExponent, LateExponent);
}
