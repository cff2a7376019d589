using WearWatch.Planning.Windows;

namespace WearWatch.Planning.Tests.Windows;

public sealed class WindowRuleTests
{
    private static readonly TimeZoneInfo Vienna = TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna");

    private static WindowRule Rule(
        string recurrence = "FREQ=WEEKLY;BYDAY=SA", string first = "2026-03-07T06:00", params string[] exceptions) => new()
        {
            Id = "r1",
            Line = "L1",
            FirstStart = Wall(first),
            Length = TimeSpan.FromHours(8),
            Recurrence = recurrence,
            Exceptions = [.. exceptions.Select(Wall)],
            CrewHours = 16,
        };

    private static DateTime Wall(string text) => DateTime.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static string[] StartsOf(WindowRule rule, string from = "2026-03-01", string to = "2026-12-31") =>
        [.. rule.Between(new DateTimeOffset(Wall(from), TimeSpan.Zero), new DateTimeOffset(Wall(to), TimeSpan.Zero), Vienna)
            .Select(w => FormattableString.Invariant($"{w.Start:yyyy-MM-dd HH:mm zzz}"))];

    // Europe/Vienna puts the clock on at 02:00 on 29 March 2026 (IANA time zone database).
    [Fact]
    public void Every_Saturday_at_six_stays_at_six_when_the_clock_is_changed() => Assert.Equal(
        ["2026-03-07 06:00 +01:00", "2026-03-14 06:00 +01:00", "2026-03-21 06:00 +01:00", "2026-03-28 06:00 +01:00",
            "2026-04-04 06:00 +02:00"],
        StartsOf(Rule(), to: "2026-04-06"));

    [Fact]
    public void A_shutdown_without_a_rule_comes_once() => Assert.Equal(["2026-03-07 06:00 +01:00"], StartsOf(Rule("")));

    [Fact]
    public void An_exception_falls_out() =>
        Assert.Equal(["2026-03-07 06:00 +01:00", "2026-03-21 06:00 +01:00"],
            StartsOf(Rule(exceptions: "2026-03-14T06:00"), to: "2026-03-27"));

    [Fact]
    public void A_start_in_the_hour_that_spring_leaves_out_falls_on_the_hour_after() =>
        Assert.Equal(["2026-03-29 03:30 +02:00"], StartsOf(Rule("", "2026-03-29T02:30")));

    // The rules and their dates: RFC 5545, 3.8.5.3, examples "Every other week", "Monthly on the first Friday", "Monthly on the
    // second-to-last weekday", moved to 2026 and counted on a calendar of that year.
    [Theory]
    [InlineData("FREQ=WEEKLY;INTERVAL=2;COUNT=3", "2026-03-07T06:00", "2026-03-07,2026-03-21,2026-04-04")]
    [InlineData("FREQ=MONTHLY;BYDAY=1FR;COUNT=3", "2026-03-06T06:00", "2026-03-06,2026-04-03,2026-05-01")]
    [InlineData("FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2;COUNT=3", "2026-03-30T06:00", "2026-03-30,2026-04-29,2026-05-28")]
    [InlineData("FREQ=WEEKLY;UNTIL=20260315T235959", "2026-03-07T06:00", "2026-03-07,2026-03-14")]
    public void Rules_give_the_dates_of_the_calendar(string recurrence, string first, string dates) =>
        Assert.Equal(dates.Split(','), StartsOf(Rule(recurrence, first)).Select(s => s[..10]));

    [Theory]
    [InlineData("every Saturday")]
    [InlineData("FREQ=SOMETIMES")]
    [InlineData("BYDAY=SA")]
    public void What_is_no_rule_is_refused(string text) => Assert.Throws<ArgumentException>(() => Rule(text));

    [Fact]
    public void A_window_keeps_its_name_when_windows_are_looked_up_from_a_later_day()
    {
        var from = new DateTimeOffset(2026, 3, 20, 0, 0, 0, TimeSpan.Zero);
        Assert.Equal("r1/20260321T0600", Rule().Between(from, from.AddDays(7), Vienna).Single().Id);
    }
}
