using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Gauging;
using WearWatch.Lubrication;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Lubrication;

public sealed class OilAdviceTests
{
    private static readonly DateTimeOffset Start = new(2026, 1, 5, 0, 0, 0, TimeSpan.Zero);

    // Source: docs/references.md [11], [36]: drip 5 to 20 drops a minute for each strand.
    [Fact]
    public void Drops_go_by_the_strand()
    {
        Assert.Contains("5 to 20 drops", OilAdvice.For(Card(0.5)).Amount!.Text.ToString(), StringComparison.Ordinal);
        Assert.Contains("15 to 60 drops", OilAdvice.For(Card(0.5) with { Strands = 3 }).Amount!.Text.ToString(),
            StringComparison.Ordinal);
    }

    // Source: the trade notes' page on bath and disc: 6 to 12 mm, rim from 200 m/min, 12 to 25 mm clear.
    [Fact]
    public void A_bath_has_a_depth_and_an_oil_stream_a_flow_from_memory()
    {
        var bath = OilAdvice.For(Card(3)).Amount!;
        var stream = OilAdvice.For(Card(20)).Amount!;

        Assert.Contains("6 to 12 mm", bath.Text.ToString(), StringComparison.Ordinal);
        Assert.True(bath.IsVerified);
        Assert.Contains("0.025 litres a minute for each kW", stream.Text.ToString(), StringComparison.Ordinal);
        Assert.Equal((Sourced.Memory, false), (stream.Source, stream.IsVerified));
    }

    // Source: docs/references.md [12]: size 80 (25.4 mm) by hand or drip up to 170 ft/min, 0.86 m/s; bath up to 1,500 ft/min,
    // 7.62 m/s.
    [Theory]
    [InlineData(0.86, OilMethod.Hand, false)]
    [InlineData(0.87, OilMethod.Hand, true)]
    [InlineData(0.87, OilMethod.Lubricator, true)]
    [InlineData(0.87, OilMethod.Bath, false)]
    [InlineData(7.7, OilMethod.Bath, true)]
    [InlineData(7.7, OilMethod.Stream, false)]
    public void A_way_of_oiling_that_does_not_suit_the_speed_is_warned_of(
        double metresPerSecond, OilMethod method, bool warned) =>
        Assert.Equal(warned, OilAdvice.For(Card(metresPerSecond) with { OilMethod = method }).Warning is not null);

    [Fact]
    public void What_the_card_does_not_tell_is_named_and_not_guessed()
    {
        var advice = OilAdvice.For(new ChainCard { Name = "K", PitchMm = 25.4 });

        Assert.Null(advice.Feed);
        Assert.Null(advice.Grade);
        Assert.Equal(2, advice.Missing.Count);
    }

    [Theory]
    [InlineData(DustLevel.Clean, 20, 8)]
    [InlineData(DustLevel.Moderate, 20, 6)]
    [InlineData(DustLevel.Heavy, 50, 2)]
    public void The_plants_factors_scale_the_handbooks_interval_and_nothing_else(DustLevel dust, double ambientC, double hours)
    {
        var terms = new OilTerms { ModerateDustFactor = 0.75, HeavyDustFactor = 0.5, WarmFactor = 0.5, FirstIntervalFactor = 2 };
        var card = Card(0.5) with { Duty = new Duty { Lubrication = LubricationState.Manual, Dust = dust, AmbientC = ambientC } };

        Assert.Equal(hours, OilingPlan.For(card, terms, isFirst: false).IntervalHours);
        Assert.Equal(2 * hours, OilingPlan.For(card, terms, isFirst: true).IntervalHours);
        Assert.Equal(100, OilingPlan.For(card with { OilingIntervalHours = 100 }, terms, isFirst: true).IntervalHours);
    }

    // The handbook's eight hours are those of roller drives. Leaf chain: 250 h or a month (truck trade, docs/references.md [67]).
    [Fact]
    public void A_chain_that_lifts_has_the_interval_of_its_own_kind_or_none()
    {
        var slow = new OilTerms { WarmFactor = 0.5, FirstIntervalFactor = 2 };
        foreach (var family in ChainFamily.All.Where(f => f.Lifts(told: true)))
        {
            var card = new ChainCard
            {
                Name = "K",
                PitchMm = 25.4,
                Family = family,
                Lifts = true,
                Duty = new Duty { Lubrication = LubricationState.Manual },
            };
            var plan = OilingPlan.For(card, slow, isFirst: true);
            Assert.Equal(family.AlwaysLifts ? 250 : null, plan.IntervalHours);
            Assert.DoesNotContain("8 h", plan.Basis.ToString(), StringComparison.Ordinal);
            Assert.Equal(100, OilingPlan.For(card with { OilingIntervalHours = 100 }, slow, isFirst: true).IntervalHours);
        }
    }

    [Fact]
    public void A_leaf_chain_that_stands_much_is_due_after_a_month_all_the_same()
    {
        var fitted = new DateTimeOffset(2026, 3, 1, 6, 0, 0, TimeSpan.Zero);
        var card = new ChainCard
        {
            Name = "K",
            PitchMm = 25.4,
            Family = ChainFamily.Named("leaf"),
            FittedAt = fitted,
            FittedCounter = new RunningHours(0),
            Duty = new Duty { Lubrication = LubricationState.Manual },
        };
        OilingDue At(double days, double hours) => OilingDue.For(
            card, [], new RunningHours(hours), ProductionCalendar.AlwaysRunning, fitted.AddDays(days));
        Assert.False(At(20, 40).IsDue);
        Assert.True(At(20, 251).IsDue);
        Assert.True(At(32, 60).IsDue);
    }

    [Fact]
    public void A_lubricator_that_misses_its_pulses_while_the_chain_runs_is_silent_and_the_next_pulse_ends_it()
    {
        ChainEvent[] pulses = [.. Enumerable.Range(0, 6).Select(i => Pulse(100 + 24 * i))];
        LubricatorWatch At(double counter, params ChainEvent[] more) => LubricatorWatch.Of(
            [.. pulses, .. more], new RunningHours(counter), ProductionCalendar.AlwaysRunning, Start)!;

        Assert.Equal((24, false), (At(250).UsualHours, At(250).IsSilent(3)));
        Assert.True(At(220 + 4 * 24).IsSilent(3));
        Assert.False(At(220 + 4 * 24).IsBlocked);
        Assert.False(At(220 + 4 * 24, Pulse(310)).IsSilent(3));
    }

    [Fact]
    public void Pulses_that_give_no_oil_tell_of_a_blocked_line()
    {
        ChainEvent[] pulses = [.. Enumerable.Range(0, 6).Select(i => Pulse(100 + 24 * i)),
            .. Enumerable.Range(6, 4).Select(i => Pulse(100 + 24 * i, 0))];
        var watch = LubricatorWatch.Of(pulses, new RunningHours(320), ProductionCalendar.AlwaysRunning, Start)!;

        Assert.True(watch.IsSilent(3));
        Assert.True(watch.IsBlocked);
    }

    [Fact]
    public void A_stroke_that_gave_no_oil_leaves_the_oil_as_old_as_it_is()
    {
        var card = Card(0.5);
        ChainEvent[] told = [Pulse(100, 2), Pulse(124, 0)];

        Assert.Equal(0, LastOiling.Of(card, told).EventIndex);
        Assert.True(LastOiling.Of(card, [Pulse(124, 0)]).IsFitting);
        var life = new FittedChain(true, 200, false, [new Observation(200, 0.2, 0.03, 0)]);
        var reading =
            new Reading { Chain = "K", Counter = new RunningHours(200), Tool = Tool.Tape, Pitches = 40, LengthMm = 1018 };
        Assert.Equal([0.0, 100.0], OilAges.Of(life, [reading], told, ProductionCalendar.AlwaysRunning).OiledAtHours);
    }

    [Fact]
    public void A_chain_oiled_by_hand_has_no_lubricator_to_watch() =>
        Assert.Null(LubricatorWatch.Of(
            [.. Enumerable.Range(0, 6).Select(i => Pulse(24 * i) with { Oil = new OilApplied(OilMethod.Hand) })],
            new RunningHours(900), ProductionCalendar.AlwaysRunning, Start));

    // Oracle: the tracks themselves. 0.4 % in 1,000 h before, 0.1 % since, read with 0.03 % scatter: hardly a doubt. Alike on
    // both sides: half.
    [Theory]
    [InlineData(0.1, 0.99, 1)]
    [InlineData(0.4, 0.2, 0.8)]
    public void The_effect_of_another_oil_has_a_probability(double rateAfter, double least, double most)
    {
        Observation[] seen = [.. Enumerable.Range(0, 14).Select(i => new Observation(
            200 * (i + 1), 0.3 + (i < 7 ? 0.4 : 0.4 * 1.4 / (0.2 * (i + 1)) + rateAfter * (0.2 * (i + 1) - 1.4) / (0.2 * (i + 1)))
                * 0.2 * (i + 1), 0.03, i))];
        Reading[] readings = [.. seen.Select(o => new Reading
        {
            Chain = "K", Counter = new RunningHours(o.HoursSinceFitting), Tool = Tool.Tape, Pitches = 40, LengthMm = 1016,
        })];
        ChainEvent[] oilings = [.. Enumerable.Range(1, 14)
            .Select(i => Pulse(200 * i - 10) with { Oil = new OilApplied(OilMethod.Hand, i < 8 ? "SAE 20" : "SAE 30") })];

        var watch = OilEffectWatch.Of(
            new FittedChain(true, 2800, false, seen), readings, oilings, ProductionCalendar.AlwaysRunning)!;
        Assert.InRange(watch.ProbabilityFell, least, most);
        Assert.Contains("from SAE 20 to SAE 30", watch.Words.ToString(), StringComparison.Ordinal);
    }

    private static ChainCard Card(double metresPerSecond) => new()
    {
        Name = "K",
        PitchMm = 25.4,
        Duty = new Duty { SpeedMetresPerSecond = metresPerSecond, AmbientC = 20, Lubrication = LubricationState.Manual },
    };

    private static ChainEvent Pulse(double counter, double? ml = null) => new()
    {
        Chain = "K",
        Kind = ChainEventKind.Oiling,
        CounterBefore = new RunningHours(counter),
        Oil = new OilApplied(OilMethod.Lubricator, "", ml),
    };
}
