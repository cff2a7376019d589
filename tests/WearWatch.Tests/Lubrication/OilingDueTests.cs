using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Lubrication;
using WearWatch.Running;

namespace WearWatch.Tests.Lubrication;

public sealed class OilingDueTests
{
    private static readonly DateTimeOffset Monday = new(2026, 3, 2, 6, 0, 0, TimeSpan.Zero);
    private static readonly ProductionCalendar DayShift =
        new([.. WorkingDays.Select(d => new Shift(d, new TimeOnly(6, 0), TimeSpan.FromHours(8)))]);
    private static readonly ProductionCalendar RoundTheClock = ProductionCalendar.AlwaysRunning;

    private static IEnumerable<DayOfWeek> WorkingDays =>
        [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday];

    // Source: docs/references.md [13]: by hand about every 8 h of running.
    [Fact]
    public void A_chain_oiled_by_hand_is_due_every_eight_running_hours()
    {
        var due =
            OilingDue.For(Oiled(LubricationState.Manual), [Oiling(counter: 1000)], new RunningHours(1005), RoundTheClock, Monday);

        Assert.Equal((8.0, 5.0, 3.0, false), (due.IntervalHours, due.HoursSinceLast, due.HoursLeft, due.IsDue));
        Assert.Equal(Monday.AddHours(3), due.NextAt);
        Assert.Contains("[13]", due.Basis.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_date_of_the_next_oiling_skips_the_hours_in_which_the_line_stands()
    {
        var card = Oiled(LubricationState.Manual) with { OilingIntervalHours = 20 };
        var due = OilingDue.For(card, [Oiling(counter: 100)], new RunningHours(100), DayShift, Monday);

        // 20 h in shifts of 8 h from Monday 06:00: two whole days and four hours of Wednesday.
        Assert.Equal(new DateTimeOffset(2026, 3, 4, 10, 0, 0, TimeSpan.Zero), due.NextAt);
        Assert.Contains("set by the plant", due.Basis.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_overdue_chain_is_due_now()
    {
        var due = OilingDue.For(Oiled(LubricationState.Poor), [Oiling(counter: 0)], new RunningHours(30), DayShift, Monday);

        Assert.True(due.IsDue);
        Assert.Equal(-22, due.HoursLeft);
        Assert.Equal(Monday, due.NextAt);
    }

    [Fact]
    public void Hours_since_the_last_oiling_run_on_over_a_recorded_reset_of_the_counter()
    {
        var reset = new ChainEvent
        {
            Chain = "K1",
            Kind = ChainEventKind.MeterReset,
            CounterBefore = new RunningHours(1040),
            CounterAfter = RunningHours.Zero,
        };
        var due =
            OilingDue.For(Oiled(LubricationState.Auto), [Oiling(counter: 1000), reset], new RunningHours(25), RoundTheClock,
            Monday);

        Assert.Equal(65, due.HoursSinceLast);
        Assert.Equal(OilingTask.CheckOiler, due.Task);
    }

    [Fact]
    public void A_counter_that_went_backwards_without_record_leaves_it_to_the_dates()
    {
        var due = OilingDue.For(
            Oiled(LubricationState.Auto), [Oiling(counter: 1000, at: Monday.AddDays(-2))], new RunningHours(25), RoundTheClock,
                Monday);

        Assert.Equal(48, due.HoursSinceLast);
    }

    [Fact]
    public void Before_the_first_oiling_the_hours_count_from_fitting_with_the_makers_oil()
    {
        var card = Oiled(LubricationState.Manual) with { FittedCounter = new RunningHours(500) };
        var due = OilingDue.For(card, [], new RunningHours(504), RoundTheClock, Monday);

        Assert.Equal(4, due.HoursSinceLast);
        Assert.Contains("maker's oil", due.Basis.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_replacement_counts_as_fresh_oil()
    {
        var replaced = new ChainEvent { Chain = "K1", Kind = ChainEventKind.Replacement, CounterAfter = new RunningHours(1100) };
        var due =
            OilingDue.For(Oiled(LubricationState.Manual), [Oiling(counter: 1000), replaced], new RunningHours(1101),
            RoundTheClock, Monday);

        Assert.Equal(1, due.HoursSinceLast);
    }

    // Common practice, no source found: the task is the look at the oiler, so a look is what sets it back.
    [Fact]
    public void Where_an_oiler_does_the_work_a_look_at_it_counts()
    {
        var look = new ChainEvent { Chain = "K1", Kind = ChainEventKind.Inspection, CounterAfter = new RunningHours(1100) };
        var due =
            OilingDue.For(
                Oiled(LubricationState.Auto), [Oiling(counter: 1000), look], new RunningHours(1110), RoundTheClock, Monday);

        Assert.Equal((OilingTask.CheckOiler, 10.0), (due.Task, due.HoursSinceLast));
        Assert.Contains("the last inspection of the lubricator", due.Basis.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_an_oiler_does_the_work_an_oiling_by_hand_counts_as_a_look_at_it()
    {
        var look = new ChainEvent { Chain = "K1", Kind = ChainEventKind.Inspection, CounterAfter = new RunningHours(1000) };
        var due =
            OilingDue.For(
                Oiled(LubricationState.Auto), [look, Oiling(counter: 1100)], new RunningHours(1110), RoundTheClock, Monday);

        Assert.Equal(10, due.HoursSinceLast);
    }

    [Theory]
    [InlineData(LubricationState.Manual)]
    [InlineData(LubricationState.Poor)]
    public void A_look_puts_no_oil_on_a_chain_that_is_oiled_by_hand(LubricationState state)
    {
        var look = new ChainEvent { Chain = "K1", Kind = ChainEventKind.Inspection, CounterAfter = new RunningHours(1100) };
        var due = OilingDue.For(Oiled(state), [Oiling(counter: 1000), look], new RunningHours(1110), RoundTheClock, Monday);

        Assert.Equal(110, due.HoursSinceLast);
        Assert.True(due.IsDue);
    }

    [Fact]
    public void Surroundings_set_by_the_plant_scale_the_handbooks_interval_and_the_basis_says_so()
    {
        var plan = OilingPlan.For(
            Oiled(LubricationState.Manual) with { OilingSurroundingsFactor = 0.5 }, OilTerms.Default, isFirst: false);

        Assert.Equal(4, plan.IntervalHours);
        Assert.Contains("times 0.5 for the surroundings", plan.Basis.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(LubricationState.Dry, "runs dry")]
    [InlineData(null, "not recorded")]
    public void Nothing_is_foreseen_for_a_chain_that_runs_dry_or_of_which_nothing_is_known(LubricationState? state, string why)
    {
        var due = OilingDue.For(Oiled(state), [Oiling(counter: 0)], new RunningHours(9), RoundTheClock, Monday);

        Assert.Equal((OilingTask.None, null, false), (due.Task, due.NextAt, due.IsDue));
        Assert.Contains(why, due.Basis.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_oiling_or_a_fitting_it_says_that_it_cannot_be_said()
    {
        var due = OilingDue.For(Oiled(LubricationState.Manual), [], new RunningHours(9), RoundTheClock, Monday);

        Assert.Equal((null, null, null), (due.HoursSinceLast, due.HoursLeft, due.NextAt));
        Assert.Contains("neither a lubrication nor the fitting", due.Basis.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_counter_of_the_last_reading_is_carried_on_by_the_calendar()
    {
        var reading = new Reading
        {
            Chain = "K1",
            TakenAt = Monday.AddDays(-7),
            Counter = new RunningHours(900),
            Tool = Tool.Tape,
            Pitches = 24,
            LengthMm = 612,
        };
        var due = OilingDue.For(Oiled(LubricationState.Auto), [reading], [Oiling(counter: 890)], DayShift, Monday);

        // From 900 h a week of five shifts of 8 h.
        Assert.Equal(50, due.HoursSinceLast);
    }

    private static ChainCard Oiled(LubricationState? state) =>
        new() { Name = "K1", PitchMm = 25.4, Duty = new Duty { Lubrication = state } };

    private static ChainEvent Oiling(double counter, DateTimeOffset? at = null) =>
        new() { Chain = "K1", Kind = ChainEventKind.Oiling, At = at, CounterBefore = new RunningHours(counter) };
}
