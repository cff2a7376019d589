using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Entries;

public sealed class ExpectedReadingTests
{
    private static readonly ChainCard Card = new() { Name = "K1", PitchMm = 25.4, FittedCounter = RunningHours.Zero };
    private static readonly DateTimeOffset Start = new(2026, 1, 5, 0, 0, 0, TimeSpan.Zero);

    // A made-up chain: 0.25 % at fitting and 0.4 % per 1,000 h, read without error every 500 h.
    private static readonly IReadOnlyList<Reading> Steady =
        [.. Enumerable.Range(1, 6).Select(i => Read(500 * i, 0.25 + 0.2 * i))];

    [Fact]
    public void The_next_reading_of_a_steady_chain_is_expected_on_its_line()
    {
        var expected = Expect(Read(3500, 9))!.Expected;

        Assert.Equal(0.25 + 0.2 * 7, expected.MeanPercent, 0.04);
        Assert.InRange(expected.StandardDeviationPercent, 0.01, 0.15);
        Assert.Equal(0.2, expected.GrowthPercent, 0.04);
    }

    [Fact]
    public void The_length_that_was_entered_does_not_move_what_is_expected() =>
        Assert.Equal(Expect(Read(3500, 0.1))!.Expected, Expect(Read(3500, 5))!.Expected);

    [Fact]
    public void The_farther_ahead_the_less_sure() =>
        Assert.True(Deviation(Expect(Read(6000, 1))) > 2 * Deviation(Expect(Read(3200, 1))));

    [Fact]
    public void A_first_reading_is_expected_from_the_prior()
    {
        var expected = Expect(Read(1000, 1), [])!.Expected;

        // The broad prior: 0.25 % at the start; ln(rate) normal about ln 0.2 with variance 1, whose mean rate is 0.2 exp(1/2).
        Assert.Equal(0.25 + 0.2 * Math.Exp(0.5), expected.MeanPercent, 0.02);
    }

    [Fact]
    public void A_replacement_on_record_makes_the_next_reading_that_of_a_new_chain()
    {
        var replaced = new ChainEvent { Chain = "K1", Kind = ChainEventKind.Replacement, CounterAfter = new(3100) };
        var expected = Expect(Read(3150, 9), Steady, replaced)!.Expected;

        Assert.True(expected.MeanPercent < 0.4);
    }

    [Fact]
    public void A_slip_is_named_on_the_track_from_end_to_end()
    {
        var entry = Read(3500, 1.65) with { Pitches = 23 };
        var expected = Expect(entry)!;
        var doubt = EntryDoubt.Of(Card, entry, expected.Expected, expected.Alternatives);

        Assert.True(doubt.IsDoubted);
        Assert.Equal((SlipKind.PitchesMiscounted, 24), (doubt.Slips[0].Kind, doubt.Slips[0].Pitches));
        Assert.Equal(1.65, doubt.Slips[0].ElongationPercent, 1e-9);
    }

    // By the counter 20 h have gone by, by the calendar twelve weeks.
    [Fact]
    public void A_counter_far_behind_the_calendar_lets_a_reset_explain_more_wear()
    {
        var dated = Steady.Select(r => r with { TakenAt = Start.AddHours(r.Counter!.Value.Hours) }).ToList();
        var entry = Read(3020, 2.25) with { TakenAt = Start.AddHours(3000 + 12 * 168) };
        var expected = Expect(entry, dated)!;
        var doubt = EntryDoubt.Of(Card, entry, expected.Expected, expected.Alternatives);

        Assert.Equal(0.25 + 0.4 * 5.016, expected.Alternatives.IfCounterWasReset!.Value.MeanPercent, 0.15);
        Assert.Equal(SlipKind.CounterReset, doubt.Slips[0].Kind);
    }

    [Fact]
    public void A_counter_that_goes_with_the_calendar_gives_no_such_excuse()
    {
        var dated = Steady.Select(r => r with { TakenAt = Start.AddHours(r.Counter!.Value.Hours) }).ToList();
        var entry = Read(3500, 2.25) with { TakenAt = Start.AddHours(3500) };

        Assert.Null(Expect(entry, dated)!.Alternatives.IfCounterWasReset);
    }

    private static ExpectedReading? Expect(Reading entry, IReadOnlyList<Reading>? earlier = null, params ChainEvent[] events) =>
        ExpectedReading.Of(new(Card, earlier ?? Steady, events, WearPrior.Broad, ProductionCalendar.AlwaysRunning), entry);

    private static double Deviation(ExpectedReading? expected) => expected!.Expected.StandardDeviationPercent;

    private static Reading Read(double counter, double percent) => new()
    {
        Chain = "K1",
        Counter = new RunningHours(counter),
        Tool = Tool.Tape,
        Pitches = 24,
        LengthMm = 609.6 * (1 + percent / 100),
    };
}
