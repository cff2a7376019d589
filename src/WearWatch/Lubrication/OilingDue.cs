using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Phrases;
using WearWatch.Running;

namespace WearWatch.Lubrication;

/// <summary>When a chain is to be oiled next, or its oiler looked at.</summary>
public sealed record OilingDue
{
    /// <summary>What is to be done.</summary>
    public required OilingTask Task { get; init; }

    /// <summary>Running hours between two times; null when nothing is foreseen.</summary>
    public required double? IntervalHours { get; init; }

    /// <summary>Running hours since the last time, or since fitting; null when neither is recorded.</summary>
    public required double? HoursSinceLast { get; init; }

    /// <summary>Running hours left; negative when overdue; null when it cannot be said.</summary>
    public double? HoursLeft => IntervalHours - HoursSinceLast;

    /// <summary>Whether the interval has passed.</summary>
    public bool IsDue => HoursLeft <= 0 || IsPastItsMonths;

    /// <summary>Whether the months that its plan allows at most have passed, however little it ran.</summary>
    public bool IsPastItsMonths { get; init; }

    /// <summary>When it falls due by the production calendar; now when it is due; null when it cannot be said.</summary>
    public required DateTimeOffset? NextAt { get; init; }

    /// <summary>What the interval and the hours rest on, in words for the screen.</summary>
    public required Phrase Basis { get; init; }

    /// <summary>
    /// When a chain is due, with the hours taken from its records and, since the last of them, from the calendar.
    /// </summary>
    /// <param name="card">The chain.</param>
    /// <param name="readings">Its readings in the order in which they were taken.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment for which it is asked.</param>
    /// <param name="terms">What the plant says of its oiling; nothing if not given.</param>
    public static OilingDue For(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, ProductionCalendar calendar,
        DateTimeOffset now, OilTerms? terms = null) =>
        For(card, events, HourCounter.At(now, readings, events, calendar), calendar, now, terms);

    /// <summary>When a chain is due, with what its hour counter shows now.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    /// <param name="counterNow">The hour counter; null when it is not known: then dates and the calendar serve.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="now">The moment for which it is asked.</param>
    /// <param name="terms">What the plant says of its oiling; nothing if not given.</param>
    public static OilingDue For(
        ChainCard card, IReadOnlyList<ChainEvent> events, RunningHours? counterNow, ProductionCalendar calendar,
        DateTimeOffset now, OilTerms? terms = null)
    {
        var last = LastOiling.Of(card, events);
        var plan = OilingPlan.For(card, terms ?? OilTerms.Default, last.IsFitting);
        var since = last.HoursUntil(events, counterNow, calendar, now);
        var latest = plan.MostMonths is { } months ? last.At?.AddMonths(months) : null;
        DateTimeOffset? byHours = plan.IntervalHours - since is { } left ? calendar.After(now, new RunningHours(left)) : null;
        return new OilingDue
        {
            Task = plan.Task,
            IntervalHours = plan.IntervalHours,
            HoursSinceLast = since,
            IsPastItsMonths = latest <= now,
            NextAt = latest <= now ? now : byHours < latest ? byHours : latest ?? byHours,
            Basis = since is { } hours
                ? Phrase.Of($"{plan.Basis}; {hours:#,0.#} h since {last.Name}")
                : $"{plan.Basis}; neither a lubrication nor the fitting is recorded with a counter or a date",
        };
    }
}
