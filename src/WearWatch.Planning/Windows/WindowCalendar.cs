using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;

namespace WearWatch.Planning.Windows;

/// <summary>Reads planned shutdowns from an iCalendar file (RFC 5545).</summary>
public static class WindowCalendar
{
    /// <summary>The longest text that is read.</summary>
    public const int LongestText = 2_000_000;

    /// <summary>Turns the events of a calendar into shutdowns of a line.</summary>
    /// <param name="text">The iCalendar text.</param>
    /// <param name="line">The line that stands still.</param>
    /// <param name="zone">The plant's time zone; times of other zones are turned into it.</param>
    /// <param name="people">People who can work in each.</param>
    public static CalendarReading Read(string text, string line, TimeZoneInfo zone, int people)
    {
        if (text.Length > LongestText) return new CalendarReading([], [$"The file is longer than 2,000,000 characters."]);
        try
        {
            var events = CalendarCollection.Load(text).SelectMany(c => c.Events).ToArray();
            var outcomes = events.Select((e, i) => RuleOf(e, i, line, zone, people)).ToArray();
            return events.Length == 0
                ? new CalendarReading([], [$"There is no event in the file."])
                : new CalendarReading([.. outcomes.Select(o => o.Rule).OfType<WindowRule>()],
                    [.. outcomes.Select(o => o.Refusal).OfType<Phrase>()]);
        }
        catch (Exception e) when (e is ArgumentException or FormatException or InvalidOperationException
            or System.Runtime.Serialization.SerializationException)
        {
            return new CalendarReading([], [$"This is no iCalendar file: {e.Message}"]);
        }
    }

    private static (WindowRule? Rule, Phrase? Refusal) RuleOf(
        CalendarEvent happening, int index, string line, TimeZoneInfo zone, int people)
    {
        Phrase name = $"Event {index + 1} ({happening.Summary ?? happening.Uid})";
        if (happening.Start is not { } start) return (null, $"{name} has no start.");
        if (LengthOf(happening) is not { } length || length <= TimeSpan.Zero || length > TimeSpan.FromDays(60))
            return (null, $"{name} lasts nothing, or more than 60 days.");
        var first = AtPlant(start, zone);
        return (new WindowRule
        {
            Id = happening.Uid is { Length: > 0 } uid ? uid : FormattableString.Invariant($"{line} {first:yyyyMMddTHHmm}"),
            Line = line,
            FirstStart = first,
            Length = length,
            Recurrence = RecurrenceOf(happening, start, zone),
            Exceptions = [.. happening.ExceptionDates.GetAllDates().Select(d => AtPlant(d, zone))],
            CrewHours = people * length.TotalHours,
        }, null);
    }

    /// <summary>The rule with its UNTIL by the wall clock, as our windows are meant.</summary>
    private static string RecurrenceOf(CalendarEvent happening, CalDateTime start, TimeZoneInfo zone)
    {
        if (happening.RecurrenceRule is not { } rule) return "";
        if (rule.Until is { IsUtc: true } until && !start.IsUtc) rule.Until = new CalDateTime(AtPlant(until, zone), null);
        return rule.ToString() ?? "";
    }

    private static TimeSpan? LengthOf(CalendarEvent happening) =>
        happening.End is { } end && happening.Start is { } start ? end.AsUtc - start.AsUtc
        : happening.Duration is { } duration ? duration.ToTimeSpanUnspecified()
        : happening.Start is { HasTime: false } ? TimeSpan.FromDays(1) // RFC 5545, 3.6.1: a date without an end lasts one day
        : null;

    private static DateTime AtPlant(CalDateTime moment, TimeZoneInfo zone) =>
        moment.IsFloating || !moment.HasTime ? moment.Value : TimeZoneInfo.ConvertTimeFromUtc(moment.AsUtc, zone);
}
