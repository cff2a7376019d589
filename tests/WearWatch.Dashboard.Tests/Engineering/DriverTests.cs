using WearWatch.Chains;
using WearWatch.Dashboard.Engineer.Changes;
using WearWatch.Dashboard.Engineer.Drivers;
using WearWatch.Learning;
using WearWatch.Lives;
using WearWatch.Phrases;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Engineering;

public sealed class DriverTests
{
    [Theory]
    [InlineData("ln(load / 0.5)", "relative load", "twice the load")]
    [InlineData("ln(speed / 1 m/s)", "speed", "twice the speed")]
    [InlineData("ln(pitch / 25.4 mm)", "pitch", "twice the pitch")]
    [InlineData("lubrication Dry", "lubrication runs dry", "against by hand when due")]
    [InlineData("dust Heavy", "dust heavy", "against clean")]
    [InlineData("family Conveyor", "kind of chain: conveyor", "against roller chain")]
    [InlineData("relative load not told", "relative load not recorded", "against chains with it recorded")]
    public void A_column_of_the_model_is_told_in_words(string column, string name, string step)
    {
        var input = DriverInput.Of(new LearnedEffect(column, 1, 0.1));
        Assert.Equal((name, step), (input.Name.ToString(), input.Step.ToString()));
    }

    [Theory]
    [InlineData("line", "Press 2", "line Press 2", "against the average line", 2)]
    [InlineData("lot", "K-2417 b", "lot K-2417 b", "against the average lot", 1)]
    [InlineData("lot", "dust Heavy not told", "lot dust Heavy not told", "against the average lot", 0)]
    public void What_a_line_or_a_lot_does_is_told_by_its_name_whatever_the_name_is(
        string origin, string member, string name, string step, int told)
    {
        var input = DriverInput.Of(new LearnedEffect("whatever", 1, 0.1) { Origin = origin, Member = member });
        Assert.Equal((name, step), (input.Name.ToString(), input.Step.ToString()));
        ChainCard[] cards =
            [Desk.Card() with { Line = "Press 2", Lot = "K-2417 b" }, Desk.Card() with { Line = "Press 2", Lot = "A-1" }];
        Assert.Equal(told, cards.Count(input.Tells));
    }

    // An effect of 1 on ln(load) is proportional wear: twice the load, twice the rate.
    [Fact]
    public void An_effect_on_a_logarithm_is_told_for_twice_the_quantity()
    {
        var row = DriverLine.Of(new LearnedEffect("ln(load / 0.5)", 1, 0.1), [Desk.Card(), Desk.Card(load: null)]);
        Assert.Equal(2, row.Factor, 12);
        Assert.True(row.Low < 2 && 2 < row.High && row.IsDriver);
        Assert.Equal(1, row.Chains);
    }

    [Fact]
    public void Only_chains_in_a_state_bear_on_its_effect() => Assert.Equal(1, DriverLine.Of(
        new LearnedEffect("dust Heavy", 0.7, 0.2),
        [Desk.Card(), Desk.Card(dust: DustLevel.Heavy), Desk.Card(dust: null)]).Chains);

    // The fleet wears in proportion to its load: from 0.3 to 0.9 the rate triples, whatever the typical chain.
    [Fact]
    public void The_typical_chain_is_followed_over_the_range_of_the_plant()
    {
        FleetChain[] fleet = [.. Enumerable.Range(0, 60).Select(i => Loaded(0.3 + i % 7 * 0.1, 0.5 + i % 4 * 0.5))];
        var model = Assert.IsType<FleetTrainingOutcome.Trained>(FleetTraining.Train(fleet, seed: 1)).Model;
        var effects = PartialEffect.Of([.. fleet.Select(f => f.Card)], model);
        Assert.Equal(["relative load", "speed, m/s"], effects.Select(e => e.Quantity.ToString()));
        var load = effects[0].Points;
        Assert.Equal((0.3, 0.9), (Math.Round(load[0].Value, 9), Math.Round(load[^1].Value, 9)));
        Assert.Equal(3, load[^1].Factor / load[0].Factor, 0.15);
        Assert.All(load, p => Assert.True(p.Low <= p.Factor && p.Factor <= p.High));
    }

    [Fact]
    public void A_plant_that_does_not_tell_its_loads_has_no_such_picture() =>
        Assert.Empty(PartialEffect.Of([Desk.Card(load: null)], null!));

    private static FleetChain Loaded(double load, double speed)
    {
        var card = Desk.Card(load: load);
        return new FleetChain(
            card with { Duty = card.Duty with { SpeedMetresPerSecond = speed } },
            [.. Enumerable.Range(1, 8)
                .Select(i => new Observation(500.0 * i, 0.2 + 0.4 * load * 0.5 * i + (i % 2 == 0 ? 0.01 : -0.01), 0.03, i - 1))]);
    }

    [Fact]
    public void What_happened_about_an_alarm_is_told_once_a_kind()
    {
        var alarm = Notice(NoticeKind.RateHasRisen, days: -10);
        string[] told =
        [
            .. ChangesQuery.Nearby(
                alarm, [Event(ChainEventKind.Oiling, -40), Event(ChainEventKind.Oiling, -30),
                    Event(ChainEventKind.Tensioned, -12), Event(ChainEventKind.Oiling, -200)],
                [Notice(NoticeKind.OilingDue, -20), Notice(NoticeKind.MeasureAgain, -300, endedInDays: -200)],
                    A.Time()).Select(t => t.ToString()),
        ];
        Assert.Equal(["lubricated 2 times, last on 26 Oct 2026",
            "tensioned on 13 Nov 2026", "Lubrication due since 5 Nov 2026"], told);
    }

    // Exact binomial band, 95 %: 8 of 10 is .444 to .975 (R: binom.test(8, 10)).
    [Fact]
    public void Judged_alarms_say_how_far_alarms_can_be_trusted()
    {
        Assert.Equal("Of 10 judged, 8 were real (80.0 %; 95 % band 44 to 97 %).",
            new ChangesView([], 12, new ObservedShare(8, 10), A.Time()).Trust);
        Assert.StartsWith("None has been judged yet.", new ChangesView([], 12, new ObservedShare(0, 0), A.Time()).Trust,
            StringComparison.Ordinal);
    }

    private static NoticeRow Notice(NoticeKind kind, double days, double? endedInDays = null) => new()
    {
        Kind = kind,
        Why = Phrase.None,
        WhatToDo = Phrase.None,
        RaisedAt = A.In(days),
        EndedAt = endedInDays is { } end ? A.In(end) : null,
    };

    private static EventRow Event(ChainEventKind kind, double days) =>
        new() { Key = $"{kind}{days}", Kind = kind, At = A.In(days) };
}
