using System.Globalization;
using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Entries;

public sealed class CounterDoubtTests
{
    private const double HoursAMonth = 500;
    private static readonly DateTimeOffset Start = new(2025, 1, 8, 8, 0, 0, TimeSpan.Zero);
    private static readonly ChainCard Card = new()
    {
        Name = "K1",
        PitchMm = 25.4,
        FittedCounter = new(40_000),
        FittedAt = Start.AddMonths(-1),
    };

    // A made-up line that runs 500 h a month on a calendar of 70 %; the chain wears 0.2 % in 1,000 h.
    private static readonly ProductionCalendar Calendar = new([], 0.7);
    private static readonly IReadOnlyList<Reading> Before = [.. Enumerable.Range(0, 10).Select(i => Read(i, CounterAt(i)))];

    // The right counter is 45,500 h.
    [Theory]
    [InlineData("54500", SlipKind.CounterDigitsSwapped, 45_500)]
    [InlineData("5500", SlipKind.CounterDigitMissing, 45_500)]
    [InlineData("457500", SlipKind.CounterDigitExtra, 45_500)]
    [InlineData("445500", SlipKind.CounterDigitExtra, 45_500)]
    [InlineData("65500", SlipKind.CounterDigitWrong, 45_500)]
    [InlineData("455007", SlipKind.CounterTenfold, 45_500.7)]
    public void A_slip_of_the_counter_is_asked_about_and_what_was_meant_is_offered_first(string told, SlipKind kind, double meant)
    {
        var doubt = Ask(Read(10, double.Parse(told, CultureInfo.InvariantCulture)));

        Assert.True(doubt.IsDoubted);
        Assert.Equal(("counter_h", kind), (doubt.Column, doubt.Slips[0].Kind));
        Assert.Equal(meant, doubt.Slips[0].CounterH!.Value, 0.05);
    }

    [Fact]
    public void The_length_is_expected_at_the_hours_that_were_meant_not_at_those_in_doubt()
    {
        var right = Ask(Read(10, CounterAt(10)));
        var tenfold = Ask(Read(10, 10 * CounterAt(10)));

        Assert.Equal(right.Expected.MeanPercent, tenfold.Expected.MeanPercent, 0.01);
        Assert.Equal(right.Expected.StandardDeviationPercent, tenfold.Expected.StandardDeviationPercent, 0.01);
    }

    [Fact]
    public void A_counter_that_goes_as_it_always_did_is_not_asked_about() => Assert.False(Ask(Read(10, CounterAt(10))).IsDoubted);

    // A new chain that nobody recorded, and its first reading with a tenfold counter: the length fits no hours of the old chain.
    [Fact]
    public void A_length_that_fits_nowhere_does_not_speak_for_a_counter_that_cannot_be()
    {
        var doubt = Ask(Read(10, 10 * CounterAt(10)) with { LengthMm = 48 * 25.4 * 1.0002 });

        Assert.True(doubt.IsDoubted);
        Assert.Equal(SlipKind.CounterTenfold, doubt.Slips[0].Kind);
    }

    [Fact]
    public void An_expectation_can_be_written_out() =>
        Assert.Contains("1.2", new Expectation(1.2, 0.1).ToString(), StringComparison.Ordinal);

    [Fact]
    public void A_date_that_slipped_by_a_year_is_named()
    {
        var doubt = Ask(Read(10, CounterAt(10)) with { TakenAt = Start.AddMonths(10).AddYears(-1).AddDays(70) });

        Assert.True(doubt.IsDoubted);
        Assert.Equal(SlipKind.DateSlipped, doubt.Slips[0].Kind);
    }

    [Fact]
    public void A_counter_set_back_without_record_is_named_and_waits_for_its_record()
    {
        var doubt = Ask(Read(10, 120));

        Assert.True(doubt.IsDoubted);
        Assert.Equal(SlipKind.CounterReset, doubt.Slips[0].Kind);
        Assert.True(doubt.Slips[0].Kind.IsWithoutRecord());
    }

    [Fact]
    public void The_counter_of_the_neighbour_is_named()
    {
        var neighbour = new CounterClock(
            Card with { Name = "K2", FittedCounter = new(71_000) },
            [.. Before.Select(r => r with { Chain = "K2", Counter = new(r.Counter!.Value.Hours + 31_000) })], [], Calendar);
        var doubt = Ask(Read(10, CounterAt(10) + 31_000), neighbour);

        Assert.Equal((SlipKind.CounterOfOtherChain, "the counter of K2"), (doubt.Slips[0].Kind, doubt.Slips[0].Words.ToString()));
    }

    // The calendar says 70 %; a neighbour says that the line stood: then so few hours are what is to be expected.
    [Fact]
    public void A_line_that_stood_is_believed_when_its_neighbours_stood_too()
    {
        var neighbour = new CounterClock(
            Card with { Name = "K2" },
            [.. Before.Select(r => r with { Chain = "K2" }), Read(10, CounterAt(9) + 90) with { Chain = "K2" }], [], Calendar);
        var entry = Read(10, CounterAt(9) + 90) with { TakenAt = Start.AddMonths(10).AddDays(1) };

        var (alone, together) = (Expected(entry), Expected(entry, neighbour));
        Assert.True(together.AboutH < alone.AboutH - 100, $"{together.AboutH} h with, {alone.AboutH} h without the neighbour");
    }

    [Fact]
    public void Recorded_running_takes_the_place_of_the_calendar()
    {
        var ran = Calendar.Knowing(new RunningLog([new(Start.AddMonths(9), Start.AddMonths(10), 100)]));
        var expected = ExpectedReading.Of(new(Card, Before, [], WearPrior.Broad, ran), Read(10, CounterAt(10)))!;

        Assert.InRange(expected.Alternatives.Counter!.Expected.AboutH, CounterAt(9), CounterAt(9) + 150);
    }

    [Fact]
    public void Without_dates_a_tenfold_counter_is_asked_about_by_how_the_counter_goes_from_reading_to_reading()
    {
        IReadOnlyList<Reading> undated = [.. Before.Select(r => r with { TakenAt = null })];
        var entry = Read(10, 10 * CounterAt(10)) with { TakenAt = null };
        var expected = ExpectedReading.Of(new(Card with { FittedAt = null }, undated, [], WearPrior.Broad, Calendar), entry)!;
        var doubt = EntryDoubt.Of(Card, entry, expected.Expected, expected.Alternatives);

        Assert.True(doubt.IsDoubted);
        Assert.Equal(CounterAt(10), doubt.Slips[0].CounterH!.Value, 1);
    }

    // 45,050 and 45,500 h: swapped one way or another, both are possible after a long and uncertain time.
    [Fact]
    public void The_odds_of_all_that_is_offered_do_not_add_up_to_more_than_one()
    {
        foreach (var told in (double[])[54_500, 4_550, 455_000, 45_050, 500_000, 12, 45_499])
        {
            var doubt = Ask(Read(10, told));
            Assert.InRange(doubt.ProbabilityHonest + doubt.Slips.Sum(s => s.Probability), 0.85, 1 + 1e-9);
            Assert.Equal(doubt.Slips.OrderByDescending(s => s.Probability), doubt.Slips);
        }
    }

    private static double CounterAt(int month) => 40_500 + HoursAMonth * month;

    private static Reading Read(int month, double counterH) => new()
    {
        Chain = "K1",
        TakenAt = Start.AddMonths(month),
        Counter = new RunningHours(counterH),
        Tool = Tool.Tape,
        Pitches = 48,
        LengthMm = 48 * 25.4 * (1 + (0.25 + 0.2 * (CounterAt(month) - 40_000) / 1000) / 100),
    };

    private static EntryDoubt Ask(Reading entry, params CounterClock[] neighbours)
    {
        var expected = ExpectedReading.Of(new(Card, Before, [], WearPrior.Broad, Calendar), entry, neighbours)!;
        return EntryDoubt.Of(Card, entry, expected.Expected, expected.Alternatives);
    }

    private static ExpectedCounter Expected(Reading entry, params CounterClock[] neighbours) =>
        ExpectedReading.Of(new(Card, Before, [], WearPrior.Broad, Calendar), entry, neighbours)!.Alternatives.Counter!.Expected;
}
