using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Running;

namespace WearWatch.Worker.Tests.Intake;

public sealed class ReadingJudgeTests
{
    private static readonly DateTimeOffset Now = TestPlant.Start;

    [Fact]
    public void An_ordinary_reading_is_used_without_remark() => Assert.Equal(new Judgement.Use(), Judge(Reading(100)));

    [Theory]
    [InlineData(0.979)] // shorter than 0.98 of nominal
    [InlineData(1.101)] // longer than 1.10 of nominal
    public void A_length_that_cannot_be_waits(double share) =>
        Assert.Equal("length", Assert.IsType<Judgement.Wait>(Judge(Reading(100, share))).Column);

    [Theory]
    [InlineData(0.981)]
    [InlineData(1.099)]
    public void A_length_just_inside_is_left_to_the_track(double share) =>
        Assert.IsType<Judgement.Use>(Judge(Reading(100, share)));

    [Fact]
    public void A_counter_that_runs_back_a_little_waits() =>
        Assert.Equal("counter_h", Assert.IsType<Judgement.Wait>(Judge(Reading(900), last: 1000)).Column);

    [Fact]
    public void A_counter_that_falls_far_is_taken_as_a_reset_with_a_remark() =>
        Assert.Equal("counter_h", Assert.IsType<Judgement.Use>(Judge(Reading(20), last: 1000)).Column);

    [Fact]
    public void A_person_who_enters_a_counter_that_fell_is_asked() =>
        Assert.IsType<Judgement.Wait>(ReadingJudge.Judge(Reading(20), So(last: 1000), Now, askAboutFalls: true));

    [Fact]
    public void A_recorded_reset_explains_a_fall() =>
        Assert.Equal(new Judgement.Use(),
            ReadingJudge.Judge(Reading(20), So(last: 1000, A(ChainEventKind.MeterReset, 1010, 0)), Now, askAboutFalls: true));

    [Fact]
    public void A_recorded_reset_of_long_ago_explains_nothing() =>
        Assert.IsType<Judgement.Wait>(
            ReadingJudge.Judge(Reading(950), So(last: 1000, A(ChainEventKind.MeterReset, 800, 0)), Now, askAboutFalls: true));

    [Fact]
    public void A_replacement_that_leaves_the_counter_alone_explains_no_fall() =>
        Assert.IsType<Judgement.Wait>(ReadingJudge.Judge(
            Reading(950), So(last: 1000, A(ChainEventKind.Replacement, 1010, 1010)), Now, askAboutFalls: true));

    [Fact]
    public void A_reading_before_the_fitting_is_refused_by_its_counter() =>
        Assert.Equal("counter_h", Assert.IsType<Judgement.Refuse>(Judge(Reading(499), fittedH: 500)).Column);

    [Fact]
    public void A_reading_before_the_fitting_is_refused_by_its_date() =>
        Assert.Equal("taken_at", Assert.IsType<Judgement.Refuse>(
            ReadingJudge.Judge(
                Reading(100) with { TakenAt = Now.AddDays(-2) }, So(card: Card with { FittedAt = Now }), Now)).Column);

    [Fact]
    public void A_reading_before_a_recorded_replacement_belongs_to_the_chain_before() =>
        Assert.Equal(new Judgement.Use(), ReadingJudge.Judge(
            Reading(499), So(null, Card with { FittedCounter = new RunningHours(500) }, A(ChainEventKind.Replacement, 500, 500)),
            Now));

    [Fact]
    public void A_reading_of_the_future_is_refused() =>
        Assert.Equal("taken_at", Assert.IsType<Judgement.Refuse>(Judge(Reading(100) with { TakenAt = Now.AddDays(3) })).Column);

    [Fact]
    public void A_reading_told_late_is_not_a_counter_running_backwards() =>
        Assert.Equal(new Judgement.Use(), ReadingJudge.Judge(
            Reading(900) with { TakenAt = Now.AddDays(-9) }, new ChainSoFar(Card, [], 1000, Now.AddDays(-1)), Now,
            askAboutFalls: true));

    private static ChainCard Card => new() { Name = "C1", PitchMm = 25.4 };

    private static Judgement Judge(Reading reading, double? last = null, double? fittedH = null) => ReadingJudge.Judge(
        reading, So(last, Card with { FittedCounter = fittedH is { } h ? new RunningHours(h) : null }), Now);

    private static ChainSoFar So(double? last = null, params ChainEvent[] events) => So(last, Card, events);

    private static ChainSoFar So(double? last = null, ChainCard? card = null, params ChainEvent[] events) =>
        new(card ?? Card, events, last);

    private static Reading Reading(double counterH, double share = 1.005) => new()
    {
        Chain = "C1",
        Counter = new RunningHours(counterH),
        Tool = Tool.Tape,
        Pitches = 40,
        LengthMm = 40 * 25.4 * share,
    };

    private static ChainEvent A(ChainEventKind kind, double beforeH, double afterH) =>
        new() { Chain = "C1", Kind = kind, CounterBefore = new RunningHours(beforeH), CounterAfter = new RunningHours(afterH) };
}
