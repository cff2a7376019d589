using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Lubrication;
using WearWatch.Running;

namespace WearWatch.Tests.Lubrication;

public sealed class HourCounterTests
{
    private static readonly DateTimeOffset Now = new(2026, 3, 2, 6, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Nothing_told_is_nothing_known() => Assert.Null(At([], []));

    [Fact]
    public void The_latest_dated_count_is_carried_on_by_the_calendar() =>
        Assert.Equal(new RunningHours(1048), At([Read(900, -10), Read(1000, -2)], []));

    [Fact]
    public void A_reset_after_the_last_reading_starts_the_count_again()
    {
        var reset = Event(ChainEventKind.MeterReset, -1, before: 1024, after: 0);

        Assert.Equal(new RunningHours(24), At([Read(1000, -2)], [reset]));
    }

    [Fact]
    public void What_lies_ahead_of_now_does_not_count() =>
        Assert.Equal(new RunningHours(1048), At([Read(1000, -2), Read(5000, 3)], []));

    [Fact]
    public void Without_dates_the_last_readings_count_stands() =>
        Assert.Equal(new RunningHours(1000), At([Read(900, null), Read(1000, null)], []));

    [Fact]
    public void Without_readings_an_events_count_stands() =>
        Assert.Equal(new RunningHours(700), At([], [Event(ChainEventKind.Oiling, null, before: 700, after: null)]));

    [Fact]
    public void Several_resets_since_the_last_oiling_add_up()
    {
        ChainEvent[] events =
        [
            Event(ChainEventKind.Oiling, null, before: 100, after: null),
            Event(ChainEventKind.MeterReset, null, before: 150, after: 0),
            Event(ChainEventKind.Inspection, null, before: 30, after: 30),
            Event(ChainEventKind.MeterReset, null, before: 40, after: 5),
        ];
        var last = LastOiling.Of(Card, events);

        // 50 to the first reset, 40 to the second, 15 since.
        Assert.Equal(105, last.HoursUntil(events, new RunningHours(20), ProductionCalendar.AlwaysRunning, Now));
    }

    [Fact]
    public void An_oiling_in_the_future_says_nothing_of_the_hours_since() =>
        Assert.Null(Tomorrow.HoursUntil([], null, ProductionCalendar.AlwaysRunning, Now));

    private static LastOiling Tomorrow => new($"the last lubrication", Now.AddDays(1), null, 0);

    private static ChainCard Card => new() { Name = "K1", PitchMm = 25.4 };

    private static RunningHours? At(IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events) =>
        HourCounter.At(Now, readings, events, ProductionCalendar.AlwaysRunning);

    private static Reading Read(double counter, int? day) => new()
    {
        Chain = "K1",
        TakenAt = day is { } d ? Now.AddDays(d) : null,
        Counter = new RunningHours(counter),
        Tool = Tool.Tape,
        Pitches = 24,
        LengthMm = 612,
    };

    private static ChainEvent Event(ChainEventKind kind, int? day, double before, double? after) => new()
    {
        Chain = "K1",
        Kind = kind,
        At = day is { } d ? Now.AddDays(d) : null,
        CounterBefore = new RunningHours(before),
        CounterAfter = after is { } a ? new RunningHours(a) : null,
    };
}
