using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Chains.Parts;
using WearWatch.Parts;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Parts;

/// <summary>Parts beside the elongation; limits by docs/references.md [27], [28], [30], [38].</summary>
public sealed class PartTrackTests
{
    private static readonly DateTimeOffset Fitted = new(2026, 1, 5, 6, 0, 0, TimeSpan.Zero);

    private static ChainCard Card(string family) => new()
    {
        Name = "C",
        PitchMm = 100,
        Family = ChainFamily.Named(family),
        FittedAt = Fitted,
        FittedCounter = new RunningHours(0),
        CentreDistanceMm = 1000,
    };

    private static PartReading Read(WearPart part, double hours, double mm, double? fresh = null, double? limit = null) => new()
    {
        Part = part,
        Mm = mm,
        TakenAt = Fitted.AddHours(hours),
        Counter = new RunningHours(hours),
        Told = new PartTold(fresh, limit, ""),
    };

    private static ChainEvent Event(ChainEventKind kind, double hours) => new()
    {
        Chain = "C",
        Kind = kind,
        At = Fitted.AddHours(hours),
        CounterBefore = new RunningHours(hours),
        CounterAfter = new RunningHours(hours),
    };

    private static PartsState Of(
        ChainCard card, double nowHours, IReadOnlyList<ChainEvent> events, params PartReading[] readings) =>
        PartsState.Of(card, readings, [], events, ProductionCalendar.AlwaysRunning, Fitted.AddHours(nowHours));

    private static PartTrack Only(PartsState state) => Assert.Single(state.Tracks);

    [Theory]
    [InlineData("conveyor", WearPart.PinDiameter, 20.0, 19.5, "docs/references.md [27]")]
    [InlineData("conveyor", WearPart.PlateHeight, 60.0, 40.0, "docs/references.md [27]")]
    [InlineData("conveyor", WearPart.ToothRoot, null, 3.0, "docs/references.md [27]")]
    [InlineData("roller", WearPart.PlateHeight, 24.0, 22.8, "docs/references.md [28]")]
    [InlineData("leaf", WearPart.PlateHeight, 24.0, 22.8, "docs/references.md [30]")]
    [InlineData("roller", WearPart.Sag, null, 60.0, "docs/references.md [38]")]
    public void The_trade_has_limits_where_they_were_read(
        string family, WearPart part, double? fresh, double limit, string source)
    {
        var found = PartLimit.Of(Card(family), part, new PartTold(fresh, null, ""))!;
        Assert.Equal(limit, found.Mm, 9);
        Assert.Equal(source, found.Source);
    }

    [Theory]
    [InlineData("roller", WearPart.RollerDiameter)]
    [InlineData("roller", WearPart.ToothHook)]
    [InlineData("inverted_tooth", WearPart.ToothRoot)]
    [InlineData("conveyor", WearPart.Sag)]
    public void Where_none_was_read_the_plant_sets_its_own(string family, WearPart part)
    {
        double? fresh = part.Grows ? null : 28.58;
        Assert.Null(PartLimit.Of(Card(family), part, new PartTold(fresh, null, "")));
        var own = PartLimit.Of(Card(family), part, new PartTold(fresh, 12, "manual p. 3"))!;
        Assert.Equal((12, "manual p. 3"), (own.Mm, own.Source));
    }

    [Fact]
    public void With_a_chain_that_lifts_a_plant_may_be_stricter_and_never_milder()
    {
        Assert.Equal(22.8, PartLimit.Of(Card("leaf"), WearPart.PlateHeight, new PartTold(24, 20, ""))!.Mm, 9);
        Assert.Equal(23.4, PartLimit.Of(Card("leaf"), WearPart.PlateHeight, new PartTold(24, 23.4, ""))!.Mm, 9);
        Assert.Equal(20, PartLimit.Of(Card("roller"), WearPart.PlateHeight, new PartTold(24, 20, ""))!.Mm, 9);
    }

    // 0.3 mm in 1,000 h: the limit of 3 mm comes at 10,000 h, 5,000 h after the last reading.
    [Fact]
    public void A_tooth_root_that_wears_evenly_has_its_forecast_around_the_straight_line()
    {
        var track = Only(Of(Card("conveyor"), 5000, [],
            [.. Enumerable.Range(0, 6).Select(i => Read(WearPart.ToothRoot, 1000 * i, 0.3 * i))]));
        var known = Assert.IsType<MeasureOutlook.Known>(track.Outlook);
        Assert.InRange(known.Forecast.MiddleHours!.Value, 0.75 * 5000, 1.25 * 5000);
        Assert.True(known.EarlyDate < known.MiddleDate);
    }

    [Fact]
    public void A_new_chain_leaves_the_teeth_as_they_are_and_new_sprockets_begin_anew()
    {
        PartReading[] readings =
            [Read(WearPart.ToothRoot, 1000, 1), Read(WearPart.ToothRoot, 2000, 2), Read(WearPart.ToothRoot, 4000, 0.1)];
        var swapped = Only(Of(Card("conveyor"), 5000, [Event(ChainEventKind.Replacement, 3000)], readings));
        Assert.Equal((3, 2), (swapped.Findings.Count, swapped.Governing!.Reading.Mm));
        var renewed = Only(Of(Card("conveyor"), 5000, [Event(ChainEventKind.SprocketReplaced, 3000)], readings));
        Assert.Equal(0.1, Assert.Single(renewed.Findings).Reading.Mm);
        Assert.Equal(1000, renewed.Findings[0].Hours, 6);
    }

    [Fact]
    public void A_new_chain_begins_anew_with_its_own_parts()
    {
        var state = Of(Card("conveyor"), 5000, [Event(ChainEventKind.Replacement, 3000)],
            Read(WearPart.PinDiameter, 2000, 19.4, fresh: 20), Read(WearPart.PinDiameter, 4000, 19.98));
        Assert.Equal(19.98, Only(state).Governing!.Reading.Mm);
        Assert.Equal(Condition.WithinLimit, state.ChainCondition);
    }

    [Fact]
    public void Two_readings_of_one_visit_both_count_and_the_worse_governs()
    {
        var track = Only(Of(Card("conveyor"), 3000, [],
            Read(WearPart.ToothRoot, 2000, 2.5), Read(WearPart.ToothRoot, 2000, 0.5)));
        Assert.Equal((2, 2.5), (track.Findings.Count, track.Governing!.Reading.Mm));
    }

    // The excess length grows evenly, the sag with its root: 20, 28.3, 34.6, 40 mm are even steps of the square, 400 mm2 each.
    // The limit of 60 mm is 3,600 mm2: five steps of 500 h after the last.
    [Fact]
    public void Slack_is_followed_by_its_square_from_when_it_was_set()
    {
        PartReading[] readings =
        [
            Read(WearPart.Sag, 100, 70),
            .. Enumerable.Range(1, 4).Select(i => Read(WearPart.Sag, 500 * i, 20 * Math.Sqrt(i))),
        ];
        var state = Of(Card("roller"), 2000, [Event(ChainEventKind.Tensioned, 400)], readings);
        var track = Only(state);
        Assert.Equal(4, track.Findings.Count);
        var known = Assert.IsType<MeasureOutlook.Known>(track.Outlook);
        Assert.InRange(known.Forecast.MiddleHours!.Value, 0.7 * 2500, 1.3 * 2500);
        Assert.Equal(known.EarlyDate, state.TensionFrom);
        Assert.Equal(Condition.NotKnown, state.ChainCondition);
    }

    [Theory]
    [InlineData("leaf", 22.85, Condition.SwapNow)] // within the uncertainty of a caliper
    [InlineData("roller", 22.85, Condition.PlanASwap)]
    [InlineData("roller", 22.8, Condition.SwapNow)]
    [InlineData("roller", 23.9, Condition.WithinLimit)]
    public void A_plate_at_its_limit_takes_the_chain_with_it(string family, double mm, Condition condition)
    {
        var state = Of(Card(family), 3000, [], Read(WearPart.PlateHeight, 2000, mm, fresh: 24));
        Assert.Equal(condition, state.ChainCondition);
    }

    [Fact]
    public void What_is_out_of_line_has_a_limit_and_no_trend()
    {
        var track = Only(Of(Card("roller"), 3000, [],
            [.. Enumerable.Range(1, 4).Select(i => Read(WearPart.Alignment, 500 * i, i, limit: 3))]));
        Assert.IsType<MeasureOutlook.NotKnown>(track.Outlook);
        Assert.Equal(4, track.Governing!.Reading.Mm);
        Assert.Equal(Condition.SwapNow, track.ConditionOf(false, Fitted.AddHours(3000)));
    }

    [Theory]
    [InlineData(WearPart.PinDiameter, 20.0, null, 199.4, "value")]
    [InlineData(WearPart.PinDiameter, 20.0, 21.0, 19.4, "limit")]
    [InlineData(WearPart.BushDiameter, null, 18.0, 19.4, "new")]
    [InlineData(WearPart.ToothRoot, 20.0, null, 1.0, "new")]
    [InlineData(WearPart.ToothRoot, null, null, -1.0, "value")]
    [InlineData(WearPart.RollerDiameter, null, null, 0.0, "value")]
    public void What_no_part_has_is_refused_by_its_field(
        WearPart part, double? fresh, double? limit, double mm, string field) =>
        Assert.Equal(field, Assert.Single(
            PartFaults.Of(Read(part, 1, mm, fresh, limit), Card("conveyor"), PartTold.Nothing)).Field);

    [Fact]
    public void A_part_that_a_kind_of_chain_has_not_is_refused() =>
        Assert.Equal("part", Assert.Single(
            PartFaults.Of(Read(WearPart.RollerDiameter, 1, 20), Card("leaf"), PartTold.Nothing)).Field);

    [Fact]
    public void Every_kind_names_each_of_its_parts_once()
    {
        foreach (var family in ChainFamily.All)
        {
            Assert.NotEmpty(family.PartRules);
            Assert.Equal(family.PartRules.Count, family.PartRules.DistinctBy(r => r.Part).Count());
            Assert.All(family.PartRules.Where(r => r.Share is not null || r.Mm is not null), r => Assert.NotEmpty(r.Source));
        }
    }
}
