using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class AssessmentTests
{
    [Fact]
    public void A_chain_without_readings_is_not_known_and_forecast_from_the_prior()
    {
        var chain = Assess([]);

        Assert.Equal(Condition.NotKnown, chain.Condition);
        Assert.Null(chain.ElongationPercent);
        Assert.NotNull(chain.Forecast.MiddleHours);
        Assert.Empty(chain.Notices);
    }

    [Fact]
    public void A_young_chain_is_within_its_limit()
    {
        var chain = Assess(A.Readings(0.05, 300, 1000, 2000, 3000));

        Assert.Equal(Condition.WithinLimit, chain.Condition);
        Assert.Equal(0.35, chain.ElongationPercent!.Value, 0.03);
        Assert.Equal(0.05, chain.RatePercentPer1000Hours, 0.01);
        Assert.Empty(chain.Notices);
    }

    // Oracle by hand: docs/method.md adds A exp(-h / T_r), 0.2 % and 35 h, to a reading.
    [Theory]
    [InlineData(0, 0.2)]
    [InlineData(35, 0.07357588823)]
    [InlineData(3000, 0)]
    public void The_track_of_a_chain_just_fitted_has_the_run_in_to_come_in_it(double hours, double left)
    {
        var chain = Assess(A.Readings(0.05, hours));

        Assert.Equal(left, chain.RunInLeftPercent, 1e-9);
        Assert.InRange(chain.ElongationPercent!.Value, left, 0.5);
    }

    [Fact]
    public void A_chain_whose_limit_may_come_within_the_planning_lead_asks_for_a_plan()
    {
        var chain = Assess(A.Readings(0.4, 300, 1500, 3000, 4500, 5000));

        Assert.Equal(Condition.PlanASwap, chain.Condition);
        var notice = Assert.Single(chain.Notices);
        Assert.Equal((NoticeKind.LimitNear, false), (notice.Kind, notice.Urgent));
        Assert.Contains("of 3.0 % allowed", notice.Why.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_past_its_limit_is_to_be_swapped_now()
    {
        var chain = Assess(A.Readings(0.4, 300, 1500, 3000, 4500, 6000, 7400));

        Assert.Equal(Condition.SwapNow, chain.Condition);
        Assert.True(Assert.Single(chain.Notices).Urgent);
    }

    [Fact]
    public void The_plants_own_limit_governs() =>
        Assert.Equal(Condition.SwapNow, Assess(A.Readings(0.4, 300, 1500, 3000), limitPercent: 1.2).Condition);

    [Theory]
    [InlineData(0.18, false)] // caliper over 40 pitches: u = 0.045 % a strand, so 0.19 % are explained
    [InlineData(0.21, true)]
    public void Strands_that_differ_by_more_than_their_uncertainty_explains_ask_for_a_look_at_the_alignment(
        double apart, bool told)
    {
        var chain = Assess([A.Reading(1000, 0.3 + apart, strand: 1), A.Reading(1000, 0.3, strand: 2)]);

        Assert.Equal(told, chain.Notices.Any(n => n.Kind == NoticeKind.StrandsDiffer));
        Assert.Equal(0.3 + apart, Assert.Single(chain.Observations).Observation.ElongationPercent, 9);
    }

    [Fact]
    public void Time_alone_brings_the_limit_nearer()
    {
        Reading[] readings =
            [.. A.Readings(0.4, 300, 1500, 3000, 4500).Select((r, i) => r with { TakenAt = A.Monday.AddDays(-60 * (3 - i)) })];
        var (soon, late) = (Assess(readings), Assess(readings, now: A.Monday.AddDays(200)));

        Assert.Equal(4800, late.HoursNow - late.HoursAtLastReading);
        Assert.Equal(soon.Forecast.PercentilesHours, late.Forecast.PercentilesHours);
        Assert.Equal((Condition.WithinLimit, Condition.SwapNow), (soon.Condition, late.Condition));
    }

    [Fact]
    public void The_planners_date_is_the_early_end_through_the_calendar()
    {
        var calendar = new ProductionCalendar([], utilisation: 0.5);
        var chain = Assess(A.Readings(0.2, 300, 1500, 3000, 4500), calendar: calendar);

        Assert.Equal(A.Monday.AddHours(2 * chain.Forecast.EarlyHours!.Value), chain.DateAt(5, calendar, A.Monday)!.Value,
            TimeSpan.FromMinutes(1));
        Assert.Equal(0.05, chain.ProbabilityPassedBy(chain.DateAt(5, calendar, A.Monday)!.Value, calendar, A.Monday), 0.001);
    }

    [Fact]
    public void A_reading_that_does_not_fit_asks_to_be_measured_again()
    {
        var chain = Assess([.. A.Readings(0.2, 300, 1500, 3000, 4500), A.Reading(5200, 0.3)]);

        Assert.True(chain.Observations[^1].ProbabilityMisread > 0.9);
        Assert.Contains("0.30 %", Notice(chain, NoticeKind.MeasureAgain).Why.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_rate_that_has_risen_says_how_much_and_since_when()
    {
        Reading[] readings =
            [.. A.Readings(0.2, 300, 1000, 2000, 3000, 4000), A.Reading(4500, 1.3), A.Reading(5000, 1.6), A.Reading(5500, 1.9)];

        var notice = Notice(Assess(readings), NoticeKind.RateHasRisen);

        Assert.Contains("since about 4,000 running hours", notice.Why.ToString(), StringComparison.Ordinal);
        Assert.Matches("wears at 0\\.[56]\\d % in 1,000 h, (2\\.[5-9]|3\\.[0-2]) times the 0\\.(19|20) % before",
            notice.Why.ToString());
    }

    [Fact]
    public void A_reading_held_back_says_what_it_may_have_been_until_a_good_one_follows()
    {
        Reading[] readings = [.. A.Readings(0.2, 300, 1500, 3000), A.Reading(4000, 0, lengthMm: 4 * A.PitchMm * 1.01)];

        Assert.Contains("the decimal point slipped: 1.00 %", Notice(Assess(readings),
            NoticeKind.ReadingHeldBack).WhatToDo.ToString(),
            StringComparison.Ordinal);
        Assert.Empty(Assess([.. readings, A.Reading(4100, 1.02)]).Notices);
    }

    [Fact]
    public void The_same_input_gives_the_same_assessment_to_the_bit()
    {
        var readings = A.Readings(0.3, 300, 900, 1500, 2100, 2700, 3300, 3900);
        var (once, twice) = (Assess(readings), Assess(readings));

        Assert.Equal(once.Forecast.PercentilesHours, twice.Forecast.PercentilesHours);
        Assert.Equal(once.View, twice.View);
        Assert.Equal(once.Observations, twice.Observations);
    }

    // As below, with two pitches out: 100 (20/25.4 + 2)/118 = 2.36 %.
    [Theory]
    [InlineData(2, 2.362, false)]
    [InlineData(0, 0.656, true)]
    public void A_shortened_chain_has_its_take_up_travel_back(int pitchesOut, double limitPercent, bool told)
    {
        var card = A.Card() with { Pitches = 120, TakeUpTravelMm = 10 };
        ChainEvent[] events =
            [new() { Chain = "K1", Kind = ChainEventKind.Shortened, CounterBefore = new(2200), PitchesOut = pitchesOut }];
        var assessment = Assessment.Of(
            card, A.Readings(0.2, 300, 900, 1500, 2100), events, WearPrior.Broad, ProductionCalendar.AlwaysRunning,
            DateTimeOffset.UnixEpoch);

        Assert.Equal(limitPercent, assessment.Limit.Percent, 3);
        Assert.Equal(told, assessment.Notices.Any(n => n.Kind == NoticeKind.TakeUpEnds));
    }

    // 120 pitches of 25.4 mm in a loop whose take-up has 10 mm left: 200 x 10/(120 x 25.4) = 0.66 % (docs/references.md [38]).
    [Fact]
    public void A_take_up_that_ends_before_the_chain_is_worn_is_told_as_such()
    {
        var card = A.Card() with { Pitches = 120, TakeUpTravelMm = 10 };
        var assessment = Assessment.Of(
            card, A.Readings(0.3, 300, 900, 1500, 2100), [], WearPrior.Broad, ProductionCalendar.AlwaysRunning,
            DateTimeOffset.UnixEpoch);
        Assert.Equal(LimitReason.TakeUpTravel, assessment.Limit.Reason);
        Assert.Equal(0.656, assessment.Limit.Percent, 3);
        var notice = Assert.Single(assessment.Notices);
        Assert.Equal(NoticeKind.TakeUpEnds, notice.Kind);
        Assert.Contains("take-up", notice.Why.ToString(), StringComparison.Ordinal);
    }

    private static Notice Notice(Assessment chain, NoticeKind kind) => Assert.Single(chain.Notices, n => n.Kind == kind);

    private static Assessment Assess(
        Reading[] readings, double? limitPercent = null, ProductionCalendar? calendar = null, DateTimeOffset? now = null) =>
        Assessment.Of(
            A.Card(limitPercent: limitPercent), readings, [], WearPrior.Broad, calendar ?? ProductionCalendar.AlwaysRunning, now
                ?? A.Monday);
}
