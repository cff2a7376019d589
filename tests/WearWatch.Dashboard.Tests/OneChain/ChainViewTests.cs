using WearWatch.Dashboard.Overview.OneChain;
using WearWatch.Parts;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.OneChain;

public sealed class ChainViewTests
{
    [Fact]
    public void The_headline_tells_the_wear_and_the_three_dates()
    {
        // Round the clock: 5 % at 1,326.5 h is 55.3 days after 25 November 2026, noon; 50 % at 5,000 h; 95 % at 8,673.5 h.
        var headline = ChainView.Of(Facts(A.Assessment()), A.Time()).Headline;
        Assert.Equal("1.20 % longer than new, ± 0.10 %, after 6,000 h; wearing 0.20 % per 1,000 h.", headline.Wear);
        Assert.Equal("19 of 20 such chains last beyond 19 Jan 2027. Half last beyond 21 Jun 2027. 1 of 20 lasts beyond 21 "
            + "Nov 2027.", headline.Dates);
        Assert.StartsWith("The limit is 3.00 %: general limit", headline.Limit, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_never_measured_says_so()
    {
        var view = ChainView.Of(Facts(A.Assessment(observations: [], elongationPct: null, hoursAtLastReading: 0)), A.Time());
        Assert.StartsWith("Not measured yet.", view.Headline.Wear, StringComparison.Ordinal);
        Assert.Empty(view.Picture.Readings);
    }

    [Fact]
    public void No_upper_limit_is_said_in_words()
    {
        var percentiles = A.Percentiles().Select((h, i) => i < 90 ? h : WearForecast.HorizonHours).ToList();
        Assert.EndsWith("There is no upper limit yet: more readings are needed.",
            ChainView.Of(Facts(A.Assessment(percentiles: percentiles)), A.Time()).Headline.Dates, StringComparison.Ordinal);
    }

    [Fact]
    public void A_limit_that_has_been_passed_has_no_dates_and_no_odds()
    {
        var view = ChainView.Of(
            Facts(A.Assessment(passed: 0.99, percentiles: [.. Enumerable.Repeat(0.0, 99)], elongationPct: 3.2)), A.Time());
        Assert.Equal("The limit has been passed.", view.Headline.Dates);
        Assert.Null(view.Odds);
        Assert.Empty(view.Picture.Levels);
    }

    [Fact]
    public void Readings_stand_newest_first_with_their_judgement_and_what_waits_on_top()
    {
        var assessment = A.Assessment(
            observations: [A.Observed(2000, 0.5, 0), A.Observed(6000, 2.9, 2, misread: 0.93)],
            heldBack: [new HeldBackReading(1, $"The counter runs backwards.", [$"12,400 h"])]);
        var facts = Facts(assessment) with
        {
            Standing = [A.Reading(1, "a"), A.Reading(1, "b"), A.Reading(1, "c")],
            Waiting = [A.Reading(1, "w", standing: ReadingStanding.Waiting, why: "far too long")],
        };
        var lines = ChainView.Of(facts, A.Time()).Readings;
        Assert.Equal([ReadingVerdict.Waiting, ReadingVerdict.LikelyMisread, ReadingVerdict.HeldBack, ReadingVerdict.Used],
            lines.Select(l => l.Verdict));
        Assert.Equal("to be confirmed: far too long", lines[0].Words);
        Assert.Equal("93 % misread: it counts little", lines[1].Words);
        Assert.Equal("The counter runs backwards. Perhaps 12,400 h?", lines[2].Words);
    }

    [Fact]
    public void A_reading_that_no_observation_names_is_of_an_earlier_chain()
    {
        var facts = Facts(
            A.Assessment(observations: [A.Observed(100, 0.2, 1)])) with
        { Standing = [A.Reading(1, "a"), A.Reading(1, "b")] };
        Assert.Equal(
            [ReadingVerdict.Used, ReadingVerdict.EarlierChain], ChainView.Of(facts, A.Time()).Readings.Select(l => l.Verdict));
    }

    [Fact]
    public void The_history_keeps_the_steps_that_moved_the_early_date()
    {
        var facts = Facts(A.Assessment()) with
        {
            Forecasts = [A.Forecast(1, earlyInDays: 100), A.Forecast(1, earlyInDays: 100.2), A.Forecast(1, earlyInDays: 80)],
        };
        Assert.Equal([A.In(80), A.In(100)], ChainView.Of(facts, A.Time()).History.Select(h => h.EarlyDate!.Value));
    }

    [Fact]
    public void The_place_is_told_as_far_as_it_is_known()
    {
        Assert.Equal("Press · infeed · 16B-1", ChainView.Of(Facts(A.Assessment()), A.Time()).Where);
        Assert.Equal("kind of chain: roller",
            ChainView.Of(Facts(A.Assessment()) with { Row = A.Chain(line: "", position: "", type: "") }, A.Time()).Where);
    }

    private static ChainFacts Facts(Assessment assessment) => new()
    {
        Row = A.Chain(),
        Assessment = assessment,
        Parts = new PartsState([], HoldsLoad: false, A.Time().Now),
        Standing = [],
        Waiting = [],
        Events = [],
        Forecasts = [],
        Notices = [],
        Calendar = A.RoundTheClock,
    };
}
