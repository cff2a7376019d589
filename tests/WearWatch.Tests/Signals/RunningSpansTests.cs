using WearWatch.Running;
using WearWatch.Signals;
using WearWatch.Signals.Running;

namespace WearWatch.Tests.Signals;

/// <summary>Oracle: hours counted by hand; exact but for rounding.</summary>
public sealed class RunningSpansTests
{
    private static readonly DateTimeOffset Start = new(2026, 6, 1, 0, 0, 0, TimeSpan.Zero);

    [Fact]
    public void A_counter_that_rises_tells_its_own_hours() =>
        Assert.Equal([(20.0, RunningFinding.Plain), (0.0, RunningFinding.Plain)], Counter((0, 100), (24, 120), (48, 120)));

    [Fact]
    public void A_counter_that_comes_to_its_end_goes_on() =>
        Assert.Equal([(10.5, RunningFinding.RollOver)], Counter((0, 9_995), (24, 5.5)));

    [Fact]
    public void A_counter_that_begins_again_was_run_for_what_it_shows_at_least_and_as_planned_at_most()
    {
        Assert.Equal([(18.0, RunningFinding.Reset)], Counter((0, 5_000), (24, 18)));
        Assert.Equal([(12.0, RunningFinding.Reset)], Counter((0, 5_000), (24, 2))); // half of the day is planned
    }

    [Fact]
    public void No_counter_rises_faster_than_time() =>
        Assert.Equal([(12.0, RunningFinding.Leap), (6.0, RunningFinding.Plain)], Counter((0, 100), (24, 900), (30, 906)));

    [Fact]
    public void A_switch_tells_hours_between_its_words_and_nothing_over_a_silence() => Assert.Equal(
        [(0.25, RunningFinding.Plain), (0.0, RunningFinding.Plain), (1.0, RunningFinding.Gap)],
        Spans(RunningSpans.OfSwitch(At((0, 1), (0.25, 0), (0.5, 1), (2.5, 1)), HalfPlanned)));

    [Fact]
    public void Pulses_tell_hours_at_any_speed_and_parts_of_a_span_at_the_edge_of_a_stop()
    {
        // 600 pulses in each tenth of an hour, once half as fast amidst; then half a span and a stop.
        var spans = Spans(
            RunningSpans.OfPulses(At((0, 0), (0.1, 600), (0.2, 1200), (0.3, 1500), (0.4, 2100), (0.5, 2400), (0.6, 2400))));
        Assert.Equal([0.1, 0.1, 0.1, 0.1, 0.05, 0], spans.Select(s => Math.Round(s.Hours, 9)));
    }

    [Fact]
    public void Pulses_over_a_silence_are_hours_at_the_usual_rate_and_a_counter_of_16_bits_rolls_over()
    {
        var silent = Spans(RunningSpans.OfPulses(At((0, 0), (0.1, 600), (0.2, 1200), (5.2, 13_200))));
        Assert.Equal(2.0, silent[^1].Hours, 9);
        var rolled = Spans(RunningSpans.OfPulses(At((0, 64_000), (0.1, 64_600), (0.2, 65_200), (0.3, 264), (0.4, 864))));
        Assert.Equal((0.1, RunningFinding.RollOver), (Math.Round(rolled[2].Hours, 9), rolled[2].Finding));
    }

    [Fact]
    public void A_day_takes_its_part_of_the_spans_over_midnight_and_the_best_of_its_sources()
    {
        var day = RunningDay.Of(Signals((TelemetryKind.RunningCounter, [(-6, 100), (18, 112)]),
            (TelemetryKind.RunningSwitch, [(1, 1), (1.2, 1)])), Start, Start.AddDays(1), HalfPlanned);
        Assert.Equal((9.0, TelemetryKind.RunningCounter), (day!.Hours, day.Source));
        Assert.Equal((Start, Start.AddHours(18)), (day.From, day.To));
        Assert.Null(RunningDay.Of(Signals(), Start, Start.AddDays(1), HalfPlanned));
    }

    // A counter cuts its figures; a line that runs from 6 h on, told every five minutes. Tolerance: one step of the figures.
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.1)]
    [InlineData(1)]
    public void Coarse_figures_of_a_counter_lose_no_hours_however_often_they_are_told(double step)
    {
        var told = Enumerable.Range(0, 24 * 12 + 1).Select(i => i / 12.0)
            .Select(h => (h, Math.Floor((5_000.37 + Math.Max(0, h - 6)) / step) * step));
        var day = RunningDay.Of(Signals((TelemetryKind.RunningCounter, [.. told])), Start, Start.AddDays(1), HalfPlanned)!;
        Assert.Equal(18, day.Hours, step * 1.001);
        Assert.Equal((0.0, 0), (day.GapHours, day.Resets));
        Assert.True(RunningDay.Of(Signals((TelemetryKind.RunningCounter, [(0, 5_000), (1 / 12.0, 5_001)])), Start,
            Start.AddDays(1), HalfPlanned)!.Hours <= 1 / 12.0 + 1e-9);
    }

    [Fact]
    public void A_calendar_that_knows_when_a_line_ran_says_that_for_the_past_and_plans_the_rest()
    {
        var calendar = new ProductionCalendar([], utilisation: 0.5)
            .Knowing(new RunningLog([new(Start, Start.AddHours(10), 8), new(Start.AddHours(12), Start.AddHours(24), 0)]));
        Assert.Equal(8 + 1 + 0 + 12, calendar.Between(Start, Start.AddDays(2)).Hours, 9);
        Assert.Equal(4 + 0.5, calendar.Between(Start.AddHours(5), Start.AddHours(11)).Hours, 9);
        Assert.Equal(Start.AddDays(4), calendar.After(Start.AddDays(2), new RunningHours(24)));
    }

    [Fact]
    public void The_drift_against_the_meter_is_told_over_the_longest_time_that_signals_cover()
    {
        var record = new RunningLog(
            [.. Enumerable.Range(0, 20).Select(d => new RunStretch(Start.AddDays(d), Start.AddDays(d + 1), 10.5))]);
        var drift = MeterDrift.Of(
            [(Start.AddDays(-30), 0), (Start, 300), (Start.AddDays(10), 400), (Start.AddDays(20), 500)], record);
        Assert.Equal((200.0, 210.0, 5.0), (drift!.MeterHours, Math.Round(drift.SignalHours, 9), Math.Round(drift.Percent, 9)));
        Assert.Null(MeterDrift.Of([(Start.AddDays(-30), 0), (Start.AddDays(-1), 290)], record));
    }

    private static double HalfPlanned(DateTimeOffset from, DateTimeOffset to) => (to - from).TotalHours / 2;

    private static (double, RunningFinding)[] Counter(params (double Hours, double Value)[] told) =>
        [.. Spans(RunningSpans.OfCounter(At(told), HalfPlanned)).Select(s => (s.Hours, s.Finding))];

    private static List<(double Hours, RunningFinding Finding)> Spans(IEnumerable<RunningSpan> spans) =>
        [.. spans.Select(s => (s.Hours, s.Finding))];

    private static List<RunningSignal> At(params (double Hours, double Value)[] told) =>
        [.. told.Select(t => new RunningSignal(Start.AddHours(t.Hours), t.Value))];

    private static ILookup<TelemetryKind, RunningSignal> Signals(params (TelemetryKind Kind, (double, double)[] Told)[] kinds) =>
        kinds.SelectMany(k => At(k.Told).Select(s => (k.Kind, Signal: s))).ToLookup(k => k.Kind, k => k.Signal);
}
