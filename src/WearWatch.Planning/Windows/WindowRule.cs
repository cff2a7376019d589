using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;

namespace WearWatch.Planning.Windows;

/// <summary>A shutdown as the plant plans it: once, or recurring by a rule with exceptions (RFC 5545, 3.8.5).</summary>
/// <remarks>
/// Times are the plant's wall clock. RFC 5545 expands a rule in local time, so the shutdown of every Saturday at six stays at six
/// when the clock is changed.
/// </remarks>
public sealed record WindowRule
{
    /// <summary>Tells it from every other rule.</summary>
    public required string Id { get; init; }

    /// <summary>The line that stands still.</summary>
    public required string Line { get; init; }

    /// <summary>The first start, by the plant's wall clock.</summary>
    public required DateTime FirstStart { get; init; }

    /// <summary>How long each lasts.</summary>
    public required TimeSpan Length { get; init; }

    /// <summary>The value of an RRULE such as <c>FREQ=WEEKLY;BYDAY=SA</c>, or empty for a single shutdown.</summary>
    public string Recurrence
    {
        get;
        init => field = IsRecurrence(value)
            ? value
            : throw new ArgumentException($"'{value}' is no recurrence rule of RFC 5545.", nameof(value));
    } = "";

    /// <summary>Starts that fall out although the rule names them.</summary>
    public IReadOnlyList<DateTime> Exceptions { get; init; } = [];

    /// <summary>Who works in it, or empty.</summary>
    public string Crew { get; init; } = "";

    /// <summary>People times hours in each.</summary>
    public required double CrewHours { get; init; }

    /// <summary>Whether a text is empty or a rule that RFC 5545 knows.</summary>
    public static bool IsRecurrence(string text)
    {
        if (text.Length == 0) return true;
        try
        {
            return new RecurrencePattern(text).Frequency >= Ical.Net.FrequencyType.Hourly;
        }
        catch (Exception e) when (e is ArgumentException or FormatException or InvalidOperationException or OverflowException)
        {
            return false;
        }
    }

    /// <summary>The windows that begin from one moment until before another, in order.</summary>
    public IEnumerable<ShutdownWindow> Between(DateTimeOffset from, DateTimeOffset to, TimeZoneInfo zone)
    {
        var wall = TimeZoneInfo.ConvertTime(from, zone).DateTime;
        return ToEvent().GetOccurrences(new CalDateTime(wall > FirstStart ? wall : FirstStart))
            .Select(occurrence => occurrence.Period.StartTime.Value)
            .Select(start => (Wall: start, Start: AtPlant(start, zone)))
            .TakeWhile(start => start.Start < to)
            .Where(start => start.Start >= from)
            .Select(start => At(start.Wall, start.Start));
    }

    /// <summary>The rule as an event of a calendar, in floating time.</summary>
    internal CalendarEvent ToEvent()
    {
        var happening = new CalendarEvent
        {
            Uid = Id,
            Start = new CalDateTime(FirstStart, null),
            Duration = Ical.Net.DataTypes.Duration.FromTimeSpanExact(Length),
        };
        if (Recurrence.Length > 0) happening.RecurrenceRule = new RecurrencePattern(Recurrence);
        foreach (var exception in Exceptions) happening.ExceptionDates.Add(new CalDateTime(exception, null));
        return happening;
    }

    private ShutdownWindow At(DateTime wall, DateTimeOffset start) => new()
    {
        Id = FormattableString.Invariant($"{Id}/{wall:yyyyMMddTHHmm}"),
        Line = Line,
        Start = start,
        Length = Length,
        Crew = Crew,
        CrewHours = CrewHours,
    };

    private static DateTimeOffset AtPlant(DateTime wall, TimeZoneInfo zone)
    {
        // What would fall into the hour that spring leaves out falls on the hour after it, as with the shifts.
        if (zone.IsInvalidTime(wall)) wall = wall.AddHours(1);
        return new DateTimeOffset(wall, zone.GetUtcOffset(wall));
    }
}
