using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace WearWatch.Planning.Plans;

/// <summary>
/// Writes the planned swaps of a line as an iCalendar feed (RFC 5545). Times are in UTC, so no time zone needs describing.
/// </summary>
public static class SwapFeed
{
    /// <summary>
    /// The feed: one event for each swap, over its whole window, and one on the day from which a chain is out of use.
    /// </summary>
    /// <param name="line">The line, for the feed's name.</param>
    /// <param name="placements">The planned swaps; those that wait until after the horizon are left out.</param>
    /// <param name="noteOf">What stands in an event's description, by the chain's name.</param>
    /// <param name="writtenAt">When the plan was made.</param>
    /// <param name="say">Puts what it says into a language; English by default.</param>
    public static string Write(
        string line, IEnumerable<Placement> placements, Func<string, string> noteOf, DateTimeOffset writtenAt,
        Func<Phrase, string>? say = null)
    {
        say ??= phrase => phrase.ToString();
        var calendar = new Calendar { ProductId = "-//WearWatch//Swap plan//EN" };
        calendar.AddProperty("X-WR-CALNAME", say($"Chain swaps, line {line}"));
        foreach (var placement in placements.OrderBy(p => p.Window?.Start).ThenBy(p => p.Chain, StringComparer.Ordinal))
        {
            if (placement.Window is { } window)
                calendar.Events.Add(EventOf(placement.Chain, window, noteOf(placement.Chain), writtenAt, say));
            else if (placement.OutOfUseFrom is { } from)
                calendar.Events.Add(OutOfUse(placement.Chain, line, from, noteOf(placement.Chain), writtenAt, say));
        }

        return new CalendarSerializer().SerializeToString(calendar) ?? "";
    }

    private static CalendarEvent EventOf(
        string chain, Windows.ShutdownWindow window, string note, DateTimeOffset writtenAt, Func<Phrase, string> say) => new()
        {
            // The same chain keeps its event when its swap is moved, so that calendars move it too.
            Uid = $"swap-{Uri.EscapeDataString(chain)}@wearwatch",
            DtStamp = Utc(writtenAt),
            Start = Utc(window.Start),
            End = Utc(window.End),
            Summary = say($"Swap chain {chain}"),
            Location = window.Line,
            Description = note,
        };

    private static CalendarEvent OutOfUse(
        string chain, string line, DateTimeOffset from, string note, DateTimeOffset writtenAt, Func<Phrase, string> say) => new()
        {
            Uid = $"out-of-use-{Uri.EscapeDataString(chain)}@wearwatch",
            DtStamp = Utc(writtenAt),
            Start = Utc(from),
            End = Utc(from.AddHours(1)),
            Summary = say($"Out of use from now on: chain {chain} holds a load, and no swap of it is planned"),
            Location = line,
            Description = note,
        };

    private static CalDateTime Utc(DateTimeOffset moment) => new(moment.UtcDateTime, "UTC");
}
