using WearWatch.Phrases;
using WearWatch.Running;

namespace WearWatch.Rounds;

/// <summary>When a chain is to be measured again: the sooner, the nearer the limit and the greater the doubt.</summary>
/// <remarks>
/// A quarter of the hours to the early end of the forecast, so that several readings fall before it. The early end comes closer
/// with the limit and with doubt alike. Not more often than weekly, not more seldom than quarterly. Common practice;
/// docs/method.md.
/// </remarks>
public static class MeasuringDue
{
    /// <summary>Of the hours to the early end so much may pass between two readings.</summary>
    public const double ShareOfEarlyHours = 0.25;

    /// <summary>Not more often than this: wear of a week hides in the scatter of a tape.</summary>
    public static TimeSpan Least { get; } = TimeSpan.FromDays(7);

    /// <summary>Not more seldom than this: a drive may change without anybody's word.</summary>
    public static TimeSpan Most { get; } = TimeSpan.FromDays(91);

    /// <summary>Where the early end comes at less than this share of the middle, doubt governs and not the limit.</summary>
    private const double DoubtShare = 0.5;

    /// <summary>The task for a chain.</summary>
    /// <param name="lastTakenAt">When it was last measured; null when it never was.</param>
    /// <param name="earlyHours">Hours from that reading to the early end of the forecast; null when it is not in sight.</param>
    /// <param name="middleHours">Hours from that reading to the middle of the forecast; null when it is not in sight.</param>
    /// <param name="lastDoesNotFit">Whether the last reading is doubted, held back or waits.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment for which it is asked.</param>
    public static RoundTask For(
        DateTimeOffset? lastTakenAt, double? earlyHours, double? middleHours, bool lastDoesNotFit, ProductionCalendar calendar,
        DateTimeOffset now)
    {
        if (lastTakenAt is not { } last) return At(now, $"not measured yet");
        if (lastDoesNotFit) return At(now, $"the last reading does not fit: measure again");
        if (earlyHours is not { } early) return At(last + Most, $"the limit is not in sight: once a quarter (common practice)");
        var quarter = calendar.After(last, new RunningHours(ShareOfEarlyHours * early));
        if (quarter is null || quarter > last + Most)
            return At(last + Most, $"far from the limit: once a quarter (common practice)");
        return quarter < last + Least
            ? At(last + Least, early <= 0
                ? Phrase.Of($"the limit may have been passed: weekly until it is swapped")
                : $"the limit is near: weekly")
            : At(quarter.Value, Near(early, middleHours));
    }

    private static Phrase Near(double early, double? middleHours) => early < DoubtShare * (middleHours ?? double.PositiveInfinity)
        ? Phrase.Of($"1 of 20 such chains is at the limit {early:#,0} h after the last reading, and a quarter of that is run; "
            + $"how fast it wears is doubtful")
        : $"1 of 20 such chains is at the limit {early:#,0} h after the last reading, and a quarter of that is run";

    private static RoundTask At(DateTimeOffset due, Phrase why) => new(RoundTaskKind.Measure, due, why);
}
