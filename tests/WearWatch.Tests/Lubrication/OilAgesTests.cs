using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Lubrication;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Lubrication;

public sealed class OilAgesTests
{
    private static readonly DateTimeOffset Start = new(2026, 1, 5, 0, 0, 0, TimeSpan.Zero);

    // Oracle: the saw-tooth's own geometry. Oiled at 0, 100 and 250 h, seen to 300 h: triangles of 100, 150 and 50 h.
    [Fact]
    public void The_mean_age_is_the_area_under_the_saw_tooth()
    {
        var ages = OilAges.At(0, 100, 250);

        Assert.Equal((100.0 * 100 + 150 * 150 + 50 * 50) / 2 / 300, ages.Mean(0, 300)!.Value, 1e-12);
        Assert.Equal(50, ages.AgeAt(300));
        Assert.Equal(0, ages.AgeAt(100));
    }

    // Oracle: a sum of small steps of age^power, 0.01 h wide; its own error is below 1e-4 of the sum.
    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(2)]
    public void The_exposure_is_the_integral_of_the_age_raised_to_a_power(double power)
    {
        var ages = OilAges.At(0, 40, 41, 160);
        var steps = 0.0;
        for (var i = 0; i < 19_000; i++) steps += Math.Pow(ages.AgeAt(10 + (i + 0.5) / 100)!.Value, power) / 100;

        Assert.Equal(1, ages.Sum(10, 200, age => Math.Pow(age, power + 1) / (power + 1)) / steps, 1e-4);
    }

    [Fact]
    public void Before_the_first_oiling_of_a_chain_whose_fitting_is_not_known_nothing_is_known()
    {
        var ages = OilAges.At(400);

        Assert.Null(ages.AgeAt(399));
        Assert.Null(ages.Mean(0, 700));
        Assert.Equal(500, ages.Mean(0, 1400));
    }

    [Fact]
    public void A_chain_without_a_recorded_oiling_tells_nothing_rather_than_never_oiled() =>
        Assert.False(Ages([], Read(1000, 1000)).IsKnown);

    [Fact]
    public void A_counter_places_an_oiling_between_readings_and_the_fitting_counts_as_one() =>
        Assert.Equal([0, 340.0], Ages([Oiled(counter: 1340)], Read(1000, 0), Read(1500, 500)).OiledAtHours);

    // The line ran 500 h in 40 days, half of what the calendar foresees; a quarter of the days is a quarter of the hours.
    [Fact]
    public void A_date_places_an_oiling_in_proportion() =>
        Assert.Equal([0, 125.0], Ages([Oiled(day: 10)], Read(1000, 0, day: 0), Read(1500, 500, day: 40)).OiledAtHours);

    [Fact]
    public void After_a_reset_the_date_says_which_of_two_equal_counts_is_meant()
    {
        (Reading, Observation)[] readings = [Read(900, 0, 0), Read(1100, 200, 20), Read(100, 420, 40), Read(1000, 1320, 90)];

        Assert.Equal([0, 1270.0], Ages([Oiled(day: 85, counter: 950)], readings).OiledAtHours);
        Assert.Equal([0, 50.0], Ages([Oiled(day: 5, counter: 950)], readings).OiledAtHours);
    }

    [Fact]
    public void What_was_oiled_before_the_chain_was_fitted_is_not_its_oiling() =>
        Assert.False(Ages([Oiled(counter: 200)], Read(1000, 100), Read(1500, 600)).IsKnown);

    [Fact]
    public void A_forecast_looks_at_no_oiling_after_the_last_known_reading()
    {
        Reading[] readings = [Read(1000, 0, 0).Reading, Read(2000, 1000, 50).Reading];
        ChainEvent[] past = [Oiled(counter: 1500)];
        ChainEvent[] poisoned = [.. past, Oiled(counter: 2500), Oiled(counter: 9000), Oiled(day: 300, counter: 1200)];

        var known = DutySeen.AtLastReading(Card, readings, past, ProductionCalendar.AlwaysRunning).Duty.HoursSinceOiling;
        Assert.Equal(250, known);
        Assert.Equal(
            known, DutySeen.AtLastReading(Card, readings, poisoned, ProductionCalendar.AlwaysRunning).Duty.HoursSinceOiling);
    }

    [Fact]
    public void The_cards_temperature_goes_before_the_readings_and_one_reading_makes_no_surroundings()
    {
        Reading Warm(double h, double c) => Read(1000 + h, h).Reading with { TemperatureC = c };
        ChainCard Seen(ChainCard card, params Reading[] readings) =>
            DutySeen.AtLastReading(card, readings, [], ProductionCalendar.AlwaysRunning);

        Assert.Equal(35, Seen(Card, Warm(0, 30), Warm(1, 35), Warm(2, 60)).Duty.AmbientC);
        Assert.Null(Seen(Card, Warm(0, 30), Warm(1, 35)).Duty.AmbientC);
        Assert.Equal(
            10, Seen(Card with { Duty = new Duty { AmbientC = 10 } }, Warm(0, 30), Warm(1, 35), Warm(2, 60)).Duty.AmbientC);
    }

    private static ChainCard Card { get; } =
        new() { Name = "C", PitchMm = 25.4, FittedCounter = new RunningHours(1000), FittedAt = Start };

    private static OilAges Ages(ChainEvent[] events, params (Reading Reading, Observation Seen)[] readings) => OilAges.Of(
        new FittedChain(true, 5000, false, [.. readings.Select((r, i) => r.Seen with { ReadingIndex = i })]),
        [.. readings.Select(r => r.Reading)], events, ProductionCalendar.AlwaysRunning);

    private static (Reading Reading, Observation Seen) Read(double counter, double hours, int? day = null) => (
        new Reading
        {
            Chain = "C",
            TakenAt = day is { } d ? Start.AddDays(d) : null,
            Counter = new RunningHours(counter),
            Tool = Tool.Tape,
            Pitches = 40,
            LengthMm = 1016 * (1 + hours * 1e-6),
        },
        new Observation(hours, hours * 1e-4, 0.03, 0));

    private static ChainEvent Oiled(int? day = null, double? counter = null) => new()
    {
        Chain = "C",
        Kind = ChainEventKind.Oiling,
        At = day is { } d ? Start.AddDays(d) : null,
        CounterBefore = counter is { } h ? new RunningHours(h) : null,
    };
}
