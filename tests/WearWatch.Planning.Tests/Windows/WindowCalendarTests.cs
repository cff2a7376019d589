using WearWatch.Planning.Windows;

namespace WearWatch.Planning.Tests.Windows;

public sealed class WindowCalendarTests
{
    private static readonly TimeZoneInfo Vienna = TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna");

    private static CalendarReading Read(string happening) => WindowCalendar.Read(
        $"BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//test//EN\r\n{happening}END:VCALENDAR\r\n", "L1", Vienna, 2);

    private static string Event(params string[] lines) =>
        "BEGIN:VEVENT\r\nUID:u1\r\nDTSTAMP:20260101T000000Z\r\n" + string.Concat(lines.Select(l => l + "\r\n"))
            + "END:VEVENT\r\n";

    [Fact]
    public void An_event_in_UTC_becomes_a_shutdown_by_the_wall_clock()
    {
        var rule = Assert.Single(Read(Event("DTSTART:20260704T040000Z", "DTEND:20260704T120000Z")).Rules);
        Assert.Equal((new DateTime(2026, 7, 4, 6, 0, 0), TimeSpan.FromHours(8), 16.0, "u1"),
            (rule.FirstStart, rule.Length, rule.CrewHours, rule.Id));
    }

    [Fact]
    public void An_event_of_the_plants_own_zone_keeps_its_rule_and_exceptions()
    {
        var rule = Assert.Single(Read(Event(
            "DTSTART;TZID=Europe/Vienna:20260307T060000", "DURATION:PT10H", "RRULE:FREQ=WEEKLY;BYDAY=SA;UNTIL=20260404T040000Z",
            "EXDATE;TZID=Europe/Vienna:20260314T060000")).Rules);
        Assert.Equal(TimeSpan.FromHours(10), rule.Length);
        var from = new DateTimeOffset(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);
        Assert.Equal([7, 21, 28, 4], rule.Between(from, from.AddYears(1), Vienna).Select(w => w.Start.Day));
    }

    [Fact]
    public void A_date_without_an_end_lasts_one_day() =>
        Assert.Equal(TimeSpan.FromDays(1), Assert.Single(Read(Event("DTSTART;VALUE=DATE:20260704")).Rules).Length);

    [Fact]
    public void An_event_that_lasts_nothing_is_refused_with_its_number()
    {
        var reading = Read(Event("DTSTART:20260704T040000Z", "DTEND:20260704T040000Z", "SUMMARY:pause")
            + Event("DTSTART:20260711T040000Z", "DURATION:PT8H"));
        Assert.Single(reading.Rules);
        Assert.StartsWith("Event 1 (pause)", Assert.Single(reading.Refusals).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "There is no event in the file.")]
    [InlineData("line,start\nL1,2026", "This is no iCalendar file: ")]
    [InlineData("BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nDTSTART:yesterday\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n", " has no start.")]
    public void What_is_no_calendar_is_refused_in_words(string text, string told)
    {
        var reading = WindowCalendar.Read(text, "L1", Vienna, 1);
        Assert.Empty(reading.Rules);
        Assert.Contains(told, Assert.Single(reading.Refusals).ToString(), StringComparison.Ordinal);
    }
}
