using WearWatch.Chains;
using WearWatch.Phrases;
using WearWatch.Running;

namespace WearWatch.Lubrication;

/// <summary>
/// Since when a chain's oil ages: its last oiling or, before the first, its fitting with the maker's pre-lubrication. Where
/// an oiler does the work, since when nobody has seen it do so: the last look at it.
/// </summary>
/// <param name="Name">What it was, in words.</param>
/// <param name="At">When, if it was told.</param>
/// <param name="Counter">The hour counter right after it, if it was told.</param>
/// <param name="EventIndex">Which of the chain's events it was; -1 for the fitting that stands on the card.</param>
public sealed record LastOiling(Phrase Name, DateTimeOffset? At, RunningHours? Counter, int EventIndex)
{
    private static readonly Phrase Fitting = $"fitting, with the maker's oil";

    /// <summary>Whether the chain still runs on the maker's oil.</summary>
    public bool IsFitting => Name == Fitting;

    /// <summary>The last oiling of the chain that runs now, or the last look at its oiler.</summary>
    /// <remarks>
    /// A replacement brings a new chain, and with it the maker's oil: older oilings no longer count. An inspection counts only
    /// where an automatic oiler is to be looked at; it puts no oil on a chain that is oiled by hand.
    /// </remarks>
    public static LastOiling Of(ChainCard card, IReadOnlyList<ChainEvent> events)
    {
        for (var i = events.Count - 1; i >= 0; i--)
        {
            if (NameOf(events[i], card.Duty.Lubrication) is not { } name) continue;
            return new LastOiling(name, events[i].At, events[i].CounterAfter ?? events[i].CounterBefore, i);
        }

        return new LastOiling(Fitting, card.FittedAt, card.FittedCounter, -1);
    }

    /// <summary>What an event means for the oil; null when it means nothing.</summary>
    private static Phrase? NameOf(ChainEvent happened, LubricationState? lubrication) => happened.Kind switch
    {
        ChainEventKind.Replacement => Fitting,
        ChainEventKind.Oiling when happened.BroughtOil => $"the last lubrication",
        ChainEventKind.Inspection when lubrication == LubricationState.Auto => $"the last inspection of the lubricator",
        _ => null,
    };

    /// <summary>Running hours from it to now: by the counter over its recorded resets, else by dates and the calendar.</summary>
    /// <param name="events">The chain's events.</param>
    /// <param name="counterNow">What the counter shows now, if it is known.</param>
    /// <param name="calendar">When the line runs.</param>
    /// <param name="now">Now.</param>
    /// <returns>The hours; null when neither a counter nor a date is known.</returns>
    public double? HoursUntil(
        IReadOnlyList<ChainEvent> events, RunningHours? counterNow, ProductionCalendar calendar, DateTimeOffset now)
    {
        if (Counter is { } from && counterNow is { } to && ByCounter(events, from, to) is { } hours) return hours;
        return At is { } at && at <= now ? calendar.Between(at, now).Hours : null;
    }

    /// <summary>
    /// A count that goes backwards was reset without record: the counter then says nothing, and dates must serve.
    /// </summary>
    private double? ByCounter(IReadOnlyList<ChainEvent> events, RunningHours from, RunningHours to)
    {
        var total = RunningHours.Zero;
        foreach (var change in events.Skip(EventIndex + 1))
        {
            if (change.CounterBefore is not { } before || change.CounterAfter is not { } after || before == after) continue;
            if (before < from) return null;
            total += before - from;
            from = after;
        }

        return to < from ? null : (total + (to - from)).Hours;
    }
}
