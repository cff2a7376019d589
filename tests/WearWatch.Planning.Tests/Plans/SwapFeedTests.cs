using WearWatch.Planning.Plans;

namespace WearWatch.Planning.Tests.Plans;

public sealed class SwapFeedTests
{
    private static Placement Placed(string chain, double? day) => new(chain, day is { } d ? A.Window(d) : null, default);

    [Fact]
    public void A_feed_keeps_the_rules_of_RFC_5545_and_says_what_is_planned()
    {
        var text = SwapFeed.Write("L1", [Placed("C2", 21), Placed("Ofen Süd; Kette 1, links", 14), Placed("C3", null)],
            c => $"Chain {c}: 16B-1, 81 pitches; one offset link,\nover 75 octets long so that it must be folded.", A.Monday);
        var events = Rfc5545.EventsOf(text);
        Assert.Equal(["Swap chain Ofen Süd\\; Kette 1\\, links", "Swap chain C2"], events.Select(e => e["SUMMARY"]));
        Assert.Equal(
            ("20260316T060000Z", "20260316T140000Z", "L1"), (events[0]["DTSTART"], events[0]["DTEND"], events[0]["LOCATION"]));
        Assert.Contains("81 pitches\\; one offset link\\,\\nover", events[1]["DESCRIPTION"], StringComparison.Ordinal);
    }

    [Fact]
    public void A_swap_that_is_moved_keeps_its_event()
    {
        string Uid(double day) => Rfc5545.EventsOf(SwapFeed.Write("L1", [Placed("C2", day)], _ => "", A.Monday)).Single()["UID"];
        Assert.Equal(Uid(14), Uid(21));
    }

    [Fact]
    public void A_chain_that_is_out_of_use_without_a_shutdown_stands_in_the_feed_on_that_day()
    {
        var outOfUse = Placed("C1", null) with { OutOfUseFrom = A.Monday.AddDays(10) };
        var only = Assert.Single(Rfc5545.EventsOf(SwapFeed.Write("L1", [outOfUse], _ => "", A.Monday)));
        Assert.Equal("20260312T060000Z", only["DTSTART"]);
        Assert.StartsWith("Out of use from now on: chain C1", only["SUMMARY"], StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_without_swaps_has_an_empty_feed() =>
        Assert.Empty(Rfc5545.EventsOf(SwapFeed.Write("L1", [], _ => "", A.Monday)));

    [Fact]
    public void A_feed_read_by_the_library_gives_the_same_windows()
    {
        var reading = WearWatch.Planning.Windows.WindowCalendar
            .Read(SwapFeed.Write("L1", [Placed("C2", 21)], _ => "", A.Monday), "L1", TimeZoneInfo.Utc, 1);
        Assert.Equal((A.Monday.AddDays(21).UtcDateTime, TimeSpan.FromHours(8)),
            (Assert.Single(reading.Rules).FirstStart, reading.Rules[0].Length));
    }
}
