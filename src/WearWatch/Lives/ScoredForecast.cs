using WearWatch.Wear;

namespace WearWatch.Lives;

/// <summary>A forecast that was made, held against what then happened.</summary>
/// <remarks>
/// All hours are running hours since fitting. A forecast counts from the reading it knew last, and is judged from the moment at
/// which it stood: what it says of hours that had then passed already is not held against it.
/// </remarks>
public sealed record ScoredForecast
{
    /// <summary>A forecast is a late warning when it puts the limit farther out than this times the true life.</summary>
    public const double LateFactor = 1.1;

    /// <summary>What was forecast, or null when there was no forecast.</summary>
    public required WearForecast? Forecast { get; init; }

    /// <summary>Hours at the last reading it knew.</summary>
    public required double LastReadingHours { get; init; }

    /// <summary>Hours at the moment at which it stood, before the limit was reached.</summary>
    public required double StandingHours { get; init; }

    /// <summary>Hours at which the limit was reached.</summary>
    public required double LifeHours
    {
        get;
        init => field = value > StandingHours
            ? value
            : throw new ArgumentOutOfRangeException(
                nameof(value), value, "A forecast is scored only while the limit lies ahead.");
    }

    /// <summary>Running hours that were left when it stood, as it turned out.</summary>
    public double HoursLeft => LifeHours - StandingHours;

    /// <summary>Which share of the life had passed.</summary>
    public double LifeShare => StandingHours / LifeHours;

    /// <summary>Whether it named a middle at all; without one it counts as a miss.</summary>
    public bool Answered => Forecast?.MiddleHours is not null;

    /// <summary>Forecast minus true hours left, over the true hours left; above zero is late. Null when not answered.</summary>
    public double? RelativeError => Answered ? (At(50) - LifeHours) / HoursLeft : null;

    /// <summary>Whether it would have warned too late.</summary>
    public bool IsLateWarning => Answered && At(50) > LateFactor * LifeHours;

    /// <summary>
    /// Whether the true life came before the early end of the 90 % interval: the planner's date had been too late.
    /// </summary>
    public bool EndedBeforeInterval => LifeHours < At(5);

    /// <summary>Whether the true life came after the late end of the 90 % interval.</summary>
    public bool EndedAfterInterval => LifeHours > At(95);

    /// <summary>Whether the 90 % interval held.</summary>
    public bool Held90 => !EndedBeforeInterval && !EndedAfterInterval;

    /// <summary>Whether the 50 % interval held.</summary>
    public bool Held50 => At(25) <= LifeHours && LifeHours <= At(75);

    /// <summary>Width of the 90 % interval over the true hours left; infinite while it has no upper end.</summary>
    public double RelativeWidth => (At(95) - At(5)) / HoursLeft;

    /// <summary>Whether the limit was reached by the forecast's percentile, 1 to 99.</summary>
    public bool ReachedBy(int percent) => LifeHours <= At(percent);

    /// <summary>
    /// Running hours that it gave the chain when it stood, by a percentile from 1 to 99; infinite without an end.
    /// </summary>
    public double GivenHours(int percent) => At(percent) - StandingHours;

    private double At(int percent) =>
        Math.Max(LastReadingHours + (Forecast?.Quantile(percent) ?? double.PositiveInfinity), StandingHours);
}
