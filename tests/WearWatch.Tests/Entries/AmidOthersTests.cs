using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Entries;

/// <summary>A reading that others come after, as a row of a file, and an event that has no date.</summary>
public sealed class AmidOthersTests
{
    private static readonly ChainCard Card = new() { Name = "K1", PitchMm = 25.4, FittedCounter = RunningHours.Zero };

    // A made-up chain: 0.25 % at fitting and 0.4 % per 1,000 h, read without error every 500 h.
    private static readonly IReadOnlyList<Reading> Steady =
        [.. Enumerable.Range(1, 9).Select(i => Read(500 * i, 0.25 + 0.2 * i))];

    private static KnownChain After3000 => Known(Steady.Take(6), Steady.Skip(7));

    [Fact]
    public void It_is_expected_on_the_way_between_and_known_better_than_by_those_before_alone()
    {
        Assert.Equal(0.25 + 0.2 * 7, ExpectedReading.Of(After3000, Read(3500, 1.65))!.Expected.MeanPercent, 0.04);

        // After two readings little is known of how fast it wears; the next one tells.
        var young = Known(Steady.Take(2), Steady.Skip(3));
        var amid = ExpectedReading.Of(young, Read(1500, 0.85))!.Expected;
        var newest = ExpectedReading.Of(young with { After = [] }, Read(1500, 0.85))!.Expected;
        Assert.True(amid.StandardDeviationPercent < newest.StandardDeviationPercent, $"{amid} {newest}");
    }

    [Fact]
    public void One_on_the_way_needs_no_look_and_a_slip_is_named()
    {
        Assert.True(After3000.IsOnTheWay(Read(3500, 1.65)));
        var slipped = Read(3500, 1.65) with { Pitches = 23 };

        Assert.False(After3000.IsOnTheWay(slipped));
        Assert.Equal(24, After3000.Weigh(slipped)!.Chosen!.Pitches);
    }

    // Of the next three one may be a slip itself: the first that goes on tells.
    [Fact]
    public void A_slip_beside_it_tells_nothing_of_it()
    {
        var known = Known(Steady.Take(6), [Read(4000, 1.85) with { Pitches = 23 }, .. Steady.Skip(8)]);

        Assert.False(known.Weigh(Read(3500, 1.65))!.IsDoubted);
        Assert.True(known.Weigh(Read(3500, 1.65) with { Pitches = 23 })!.IsDoubted);
    }

    [Theory]
    [InlineData(3.2, 3.9, 4.6)] // it began to wear faster
    [InlineData(0.25, 0.45, 0.65)] // it was replaced, and nobody recorded it
    public void What_those_after_bear_out_is_not_weighed(double percent, double next, double last) =>
        Assert.Null(Known(Steady.Take(6), [Read(4000, next), Read(4500, last)]).Weigh(Read(3500, percent)));

    [Theory]
    [InlineData(ChainEventKind.Oiling, 2_345, 2_345, false)] // at any time before
    [InlineData(ChainEventKind.Oiling, 4_900, 4_900, false)]
    [InlineData(ChainEventKind.Oiling, 49_000, 49_000, true)]
    [InlineData(ChainEventKind.Replacement, 49_000, 49_000, true)]
    [InlineData(ChainEventKind.MeterReset, 4_600, 0, false)]
    [InlineData(ChainEventKind.MeterReset, 2_345, 0, true)] // the counter went on over it
    public void The_counter_of_an_event_without_a_date_is_weighed_by_where_it_can_have_happened(
        ChainEventKind kind, double before, double after, bool isDoubted) =>
        Assert.Equal(isDoubted, Known(Steady, []).Weigh(Undated(kind, before, after))?.IsDoubted == true);

    [Fact]
    public void One_that_explains_why_the_counter_fell_is_weighed_at_the_fall_and_not_by_itself()
    {
        var reset = Undated(ChainEventKind.MeterReset, 4_600, 0);
        var known = Known([.. Steady, .. Enumerable.Range(1, 4).Select(i => Read(500 * i, 2.09 + 0.2 * i))], []);

        Assert.False((known with { Events = [reset] }).Weigh(reset)!.IsDoubted);
        var slipped = Undated(ChainEventKind.MeterReset, 46_000, 0);
        Assert.Contains("4,6", (known with { Events = [slipped] }).Weigh(slipped)!.Question.ToString(), StringComparison.Ordinal);
    }

    private static ChainEvent Undated(ChainEventKind kind, double before, double after) =>
        new() { Chain = "K1", Kind = kind, CounterBefore = new(before), CounterAfter = new(after) };

    private static KnownChain Known(IEnumerable<Reading> before, IEnumerable<Reading> after) =>
        new(Card, [.. before], [], WearPrior.Broad, ProductionCalendar.AlwaysRunning) { After = [.. after] };

    private static Reading Read(double counter, double percent) => new()
    {
        Chain = "K1",
        Counter = new RunningHours(counter),
        Tool = Tool.Tape,
        Pitches = 24,
        LengthMm = 609.6 * (1 + percent / 100),
    };
}
