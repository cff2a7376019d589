using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>What the track makes of one observation.</summary>
/// <param name="Observation">The observation.</param>
/// <param name="ProbabilityMisread">Probability that it is a gross error.</param>
/// <param name="ProbabilityRateRose">Probability that the wear rate jumped up within the last six readings up to this one.</param>
public sealed record JudgedObservation(Observation Observation, double ProbabilityMisread, double ProbabilityRateRose);

/// <summary>All that is concluded of one chain from its raw readings and events. It can be computed again at any time.</summary>
public sealed record Assessment
{
    /// <summary>The chain.</summary>
    public required ChainCard Card { get; init; }

    /// <summary>Its readings and events put in order.</summary>
    public required ChainHistory History { get; init; }

    /// <summary>What was believed before the first reading of the chain that runs now.</summary>
    public required WearPrior Prior { get; init; }

    /// <summary>The observations of the chain that runs now, judged.</summary>
    public required IReadOnlyList<JudgedObservation> Observations { get; init; }

    /// <summary>Running hours of the chain at its last reading.</summary>
    public required double HoursAtLastReading { get; init; }

    /// <summary>Running hours of the chain now, by counter or by calendar since the last reading.</summary>
    public required double HoursNow { get; init; }

    /// <summary>Elongation at the last reading by the track, in percent; null without readings.</summary>
    public required double? ElongationPercent { get; init; }

    /// <summary>Standard deviation of it, in percent.</summary>
    public required double? ElongationStandardDeviationPercent { get; init; }

    /// <summary>Wear rate now, in percent per 1,000 running hours: the median of the belief.</summary>
    public required double RatePercentPer1000Hours { get; init; }

    /// <summary>Standard deviation of ln(wear rate).</summary>
    public required double LogRateStandardDeviation { get; init; }

    /// <summary>The limit that governs.</summary>
    public required ReplacementLimit Limit { get; init; }

    /// <summary>The hours left to that limit, from the last reading.</summary>
    public required WearForecast Forecast { get; init; }

    /// <summary>The condition.</summary>
    public required Condition Condition { get; init; }

    /// <summary>What asks for attention; at most one of a kind.</summary>
    public required IReadOnlyList<Notice> Notices { get; init; }

    /// <summary>When the limit is reached at a percentile of the forecast (5 for the planner), or null when not in sight.</summary>
    public DateTimeOffset? DateAt(int percent, ProductionCalendar calendar, DateTimeOffset now) =>
        Forecast.Quantile(percent) is { } hours
            ? calendar.After(now, new RunningHours(hours - (HoursNow - HoursAtLastReading)))
            : null;

    /// <summary>Assesses a chain: reading, gauge, track, forecast, notices. Same input, same output, bit for bit.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="readings">Its readings in the order in which they were taken.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    /// <param name="prior">What is believed of it before the first reading.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment for which dates are given.</param>
    public static Assessment Of(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events,
        WearPrior prior, ProductionCalendar calendar, DateTimeOffset now) => throw new NotImplementedException();
}
