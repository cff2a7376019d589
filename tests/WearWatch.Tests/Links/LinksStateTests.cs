using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Chains.Links;
using WearWatch.Links;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Links;

public sealed class LinksStateTests
{
    private static readonly DateTimeOffset Fitted = new(2026, 1, 5, 6, 0, 0, TimeSpan.Zero);

    private static ChainCard Card { get; } = new()
    {
        Name = "HOIST",
        PitchMm = 15,
        Family = ChainFamily.Find("round_link")!,
        Lifts = true,
        FittedAt = Fitted,
        FittedCounter = new RunningHours(0),
        LinkEntry = LinkVerdictTests.FiveByFifteenEntry,
    };

    private static MeasuredLinks Visit(double hours, double? one = null, double? several = null, double? d = null) => new()
    {
        TakenAt = Fitted.AddHours(hours),
        Counter = new RunningHours(hours),
        OneLinkMm = one,
        SeveralLinksMm = several,
        D1Mm = d,
        D2Mm = d,
    };

    private static LinksState Of(double nowHours, params MeasuredLinks[] visits) => Of(nowHours, [], visits);

    private static LinksState Of(double nowHours, IReadOnlyList<ChainEvent> events, params MeasuredLinks[] visits) =>
        LinksState.Of(Card, visits, [], events, LawRegion.Germany, ProductionCalendar.AlwaysRunning, Fitted.AddHours(nowHours))!;

    // L11 grows by 1 mm in 1,000 h from 165: the limit of 170.6 comes at 5,600 h, 2,600 h after the last visit.
    [Fact]
    public void A_steady_measure_has_its_own_forecast_around_the_straight_line()
    {
        var state = Of(3000, [.. Enumerable.Range(1, 6).Select(i => Visit(500 * i, several: 165 + 0.5 * i))]);
        var track = state.Tracks.Single(t => t.Measure == LinkMeasure.SeveralLinks);
        var known = Assert.IsType<MeasureOutlook.Known>(track.Outlook);
        Assert.InRange(known.Forecast.MiddleHours!.Value, 0.75 * 2600, 1.25 * 2600);
        Assert.True(known.EarlyDate < known.MiddleDate);
        Assert.InRange(known.Forecast.EarlyHours!.Value, 0.3 * 2600, 2600);
        Assert.Equal(known.EarlyDate, state.EarlyDate);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Too_few_visits_show_no_trend_and_say_so(int visits)
    {
        var state = Of(3000, [.. Enumerable.Range(1, visits).Select(i => Visit(500 * i, several: 165 + 0.5 * i))]);
        var track = state.Tracks.Single(t => t.Measure == LinkMeasure.SeveralLinks);
        Assert.Equal($"Not known: {visits} of 3 visits at different running hours.",
            Assert.IsType<MeasureOutlook.NotKnown>(track.Outlook).Reason.ToString());
        Assert.Null(state.EarlyDate);
    }

    [Fact]
    public void Measures_are_tracked_apart_and_the_worst_heads_the_page()
    {
        var state = Of(1600, Visit(500, 15.2, 165.5, 4.95), Visit(1000, 15.4, 166, 4.9), Visit(1500, 15.66, 166.5, 4.85));
        Assert.Equal([3, 3, 3], state.Tracks.Select(t => t.Points.Count));
        Assert.Equal(Condition.SwapNow, state.Condition); // 15.66 +- 0.11 reaches 15.7
        Assert.StartsWith("Discard limit may be reached: inner length of one link 15.66 mm", state.Sentence.ToString(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_lower_value_at_a_later_visit_heals_nothing()
    {
        var state = Of(2100, Visit(500, 15.2), Visit(1000, 15.75), Visit(1500, 15.2), Visit(2000, 15.2));
        Assert.Equal(Condition.SwapNow, state.Condition);
        Assert.Equal(15.75, state.Verdict.Worst!.ValueMm);
    }

    [Fact]
    public void Only_a_recorded_fitting_begins_a_new_chain()
    {
        MeasuredLinks[] visits =
            [Visit(500, 15.5), Visit(1000, 15.75), Visit(1500, 15.0), Visit(2000, 15.02), Visit(2500, 15.03)];
        Assert.Equal(Condition.SwapNow, Of(2600, visits).Condition);
        var swapped = new ChainEvent
        {
            Chain = "HOIST",
            Kind = ChainEventKind.Replacement,
            At = Fitted.AddHours(1200),
            CounterBefore = new RunningHours(1200),
        };
        var anew = Of(2600, [swapped], visits);
        Assert.Equal(Condition.WithinLimit, anew.Condition);
        Assert.Equal(3, anew.Tracks.Single(t => t.Measure == LinkMeasure.OneLink).Points.Count);
    }

    // L11 grows by 1 mm in 500 h: 1.6 mm, about 800 h, are left at 2,000 h.
    [Fact]
    public void A_limit_that_may_have_been_passed_since_the_last_visit_takes_the_chain_out_of_use()
    {
        MeasuredLinks[] visits = [.. Enumerable.Range(1, 4).Select(i => Visit(500 * i, several: 165 + i))];
        Assert.Equal(Condition.PlanASwap, Of(2010, visits).Condition);
        var late = Of(4000, visits);
        Assert.Equal(Condition.SwapNow, late.Condition);
        Assert.StartsWith("By its trend the limit may have been reached since it was measured: length over links.",
            late.Sentence.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_without_a_table_has_no_link_measures() => Assert.Null(LinksState.Of(
        Card with { LinkEntry = LinkTableEntry.None }, [], [], [], LawRegion.Germany, ProductionCalendar.AlwaysRunning, Fitted));

    [Fact]
    public void Same_input_gives_the_same_bits()
    {
        MeasuredLinks[] visits = [Visit(500, 15.1, 166, 4.9), Visit(1000, 15.2, 167, 4.8), Visit(1500, 15.3, 168, 4.75)];
        var (a, b) = (Of(1600, visits), Of(1600, visits));
        Assert.Equal(
            a.Tracks.Select(t => t.Outlook).OfType<MeasureOutlook.Known>().SelectMany(k => k.Forecast.PercentilesHours),
            b.Tracks.Select(t => t.Outlook).OfType<MeasureOutlook.Known>().SelectMany(k => k.Forecast.PercentilesHours));
    }

    // 100 (170.6 - 165)/165 = 3.394 %: the maker's figure, not the general 1.5 % of a powered hoist.
    [Fact]
    public void The_makers_length_over_links_limits_readings_over_pitches_too()
    {
        Assert.Equal(3.394, ReplacementLimit.For(Card).Percent, 3);
        Assert.Equal(1.5, ReplacementLimit.For(Card with { LinkEntry = LinkTableEntry.None }).Percent);
    }

    [Fact]
    public void The_worst_of_readings_and_links_governs_the_chain_and_its_hard_date()
    {
        var now = Fitted.AddHours(1600);
        var assessment = Assessment.Of(
            Card, [], [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, now);
        Assert.Equal(Condition.NotKnown, assessment.Condition);
        var worn = Of(1600, Visit(500, 15.2), Visit(1500, 15.75)).Govern(assessment, now);
        Assert.Equal((Condition.SwapNow, now), (worn.Condition, worn.OutOfUseBy!.Value));
        Assert.Single(worn.Notices, n => n is { Kind: NoticeKind.LimitNear, Urgent: true });
        var red = assessment with { Condition = Condition.SwapNow };
        Assert.Equal(Condition.SwapNow, Of(1600, Visit(500, 15.1)).Govern(red, now).Condition);
        Assert.Equal(Condition.WithinLimit, Of(1600, Visit(500, 15.1)).Govern(assessment, now).Condition);
    }

    // Nobody has read a length over pitches: what chains like it do says nothing of the day, the links do.
    [Fact]
    public void A_chain_whose_links_alone_were_measured_has_its_hard_date_from_them()
    {
        var now = Fitted.AddHours(2010);
        MeasuredLinks[] visits = [.. Enumerable.Range(1, 4).Select(i => Visit(500 * i, several: 165 + 0.25 * i))];
        var assessment = Assessment.Of(Card, [], [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, now);
        var links = Of(2010, visits);
        Assert.True(links.StandsFor(assessment));
        Assert.NotNull(links.EarlyDate);
        Assert.Equal(links.EarlyDate, links.Govern(assessment, now).OutOfUseBy);
        var first = LimitAhead.First(links.LimitsAhead)!;
        Assert.Equal("length over links", first.Cause.ToString());
        Assert.Equal(links.EarlyDate, first.DateAt(5, ProductionCalendar.AlwaysRunning, now));
        Assert.True(links.EarlyDate < first.DateAt(50, ProductionCalendar.AlwaysRunning, now));
    }
}
