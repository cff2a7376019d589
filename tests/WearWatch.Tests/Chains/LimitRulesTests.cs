using CsCheck;
using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Tests.Chains;

public sealed class LimitRulesTests
{
    // Source: docs/references.md [8], [9]: 3 % up to 67 teeth (66 on one page), above 200/N.
    [Theory]
    [InlineData(60, 3.0, LimitReason.General)]
    [InlineData(66, 3.0, LimitReason.General)]
    [InlineData(75, 2.667, LimitReason.SprocketTeeth)]
    [InlineData(80, 2.5, LimitReason.SprocketTeeth)]
    [InlineData(100, 2.0, LimitReason.SprocketTeeth)]
    [InlineData(114, 1.754, LimitReason.SprocketTeeth)]
    [InlineData(120, 1.667, LimitReason.SprocketTeeth)]
    [InlineData(150, 1.333, LimitReason.SprocketTeeth)]
    public void The_largest_sprocket_lowers_the_limit(int teeth, double percent, LimitReason reason)
    {
        var limit = ReplacementLimit.ForTeeth([19, teeth]);

        Assert.Equal(percent, limit.Percent, 5e-4);
        Assert.Equal(reason, limit.Reason);
    }

    [Fact]
    public void Limits_never_rise_with_more_teeth_and_follow_two_hundred_over_n() =>
        Gen.Select(Gen.Int[5, 999], Gen.Int[1, 50]).Sample((teeth, more) =>
        {
            var fewer = ReplacementLimit.ForTeeth([teeth]).Percent;
            return ReplacementLimit.ForTeeth([Math.Min(1000, teeth + more)]).Percent <= fewer && fewer <= 3
                && Math.Abs(fewer - Math.Min(3, 200.0 / teeth)) < 1e-12;
        });

    // Sources in the order of the rows: docs/references.md [8], [8], [10], [10], [29].
    [Fact]
    public void What_a_drive_asks_for_lowers_the_limit()
    {
        Assert.Equal((1.5, LimitReason.FixedCentres), Governing(new() { FixedCentres = true }));
        Assert.Equal((1.5, LimitReason.ParallelStrands), Governing(new() { Parallel = true }));
        Assert.Equal((2.0, LimitReason.HighPerformance), Governing(new() { HighPerformance = true }));
        Assert.Equal((1.0, LimitReason.Timing), Governing(new() { Positioning = true }));
        Assert.Equal((0.5, LimitReason.Timing), Governing(new() { Timing = true }));
    }

    // The source, docs/references.md [8], is a page on drives of roller chain: other kinds keep their own limit.
    [Theory]
    [InlineData("conveyor")]
    [InlineData("welded_steel")]
    [InlineData("offset_link")]
    [InlineData("leaf")]
    [InlineData("inverted_tooth")]
    public void Chains_in_parallel_have_the_limit_of_roller_drives_only_where_they_are_such(string family)
    {
        var alone = new LimitCase { Family = ChainFamily.Named(family) };
        var beside = LimitRules.For(alone with { Parallel = true });
        Assert.Equal(LimitRules.For(alone).Governing, beside.Governing);
        Assert.DoesNotContain(beside.AlsoHold, l => l.Reason == LimitReason.ParallelStrands);
        Assert.Contains(beside.Advice, l => l is { Percent: 1.5, Reason: LimitReason.ParallelStrands });
        foreach (var drive in new[] { "roller", "bush", "double_pitch" })
            Assert.Equal((1.5), LimitRules.For(new LimitCase { Family = ChainFamily.Named(drive), Parallel = true })
                .Governing.Percent);
    }

    // The same source: a conveyor at fixed centres wears to its own limit, unless the plant sets another.
    [Fact]
    public void Fixed_centres_bind_only_the_drives_that_their_source_covers()
    {
        var free = new LimitCase { Family = ChainFamily.Named("conveyor") };
        var verdict = LimitRules.For(free with { FixedCentres = true });
        Assert.Equal(LimitRules.For(free).Governing, verdict.Governing);
        var asked = Assert.Single(verdict.Advice, l => l.Reason == LimitReason.FixedCentres);
        Assert.EndsWith("set the plant's own limit", asked.Rule.ToString(), StringComparison.Ordinal);
        Assert.Equal(1.5, Governing(new() { Family = ChainFamily.Named("bush"), FixedCentres = true }).Item1);
    }

    // Sources: docs/references.md [31], [27], [27], [22] and [30], and [28] for kinds without a rule of their own.
    [Theory]
    [InlineData("double_pitch", 1.5)]
    [InlineData("conveyor", 3.0)]
    [InlineData("offset_link", 3.0)]
    [InlineData("welded_steel", 3.0)]
    [InlineData("leaf", 3.0)]
    [InlineData("bush", 2.0)]
    [InlineData("round_link", 2.0)]
    [InlineData("inverted_tooth", 2.0)]
    [InlineData("custom", 2.0)]
    public void Every_kind_of_chain_has_its_general_limit(string family, double percent) =>
        Assert.Equal(percent, LimitRules.For(new LimitCase { Family = ChainFamily.Named(family) }).Governing.Percent);

    [Theory]
    [InlineData("conveyor")]
    [InlineData("leaf")]
    public void Conveyor_and_leaf_chain_are_planned_from_two_percent(string family) =>
        Assert.Equal(2, LimitRules.For(new LimitCase { Family = ChainFamily.Named(family) }).Governing.PlanFromPercent);

    [Fact]
    public void The_lowest_binding_limit_governs_and_the_others_are_told_in_order()
    {
        var verdict = LimitRules.For(new LimitCase { SprocketTeeth = [17, 80], FixedCentres = true, HighPerformance = true });

        Assert.Equal(1.5, verdict.Governing.Percent);
        Assert.Equal([2.0, 2.5, 3.0], verdict.AlsoHold.Select(l => l.Percent));
    }

    // Geometry: 120 pitches at 3 % grow by 3.6 pitches, which is 1.8 pitches of centre travel.
    [Fact]
    public void The_travel_of_the_take_up_limits_a_long_chain()
    {
        var drive = new LimitCase { ChainPitches = 120, PitchMm = 25.4, TakeUpTravelMm = 1.8 * 25.4 };
        Assert.Equal(3, Shortening.TakeUpLimitPercent(drive)!.Value, 1e-12);

        // By hand: 25.4 mm of travel hold 200/120 = 1.67 %. Then two pitches go, and wear ends the chain at 3 %.
        var shortened = LimitRules.For(drive with { TakeUpTravelMm = 25.4 });
        Assert.Equal((LimitReason.General, 3.0), (shortened.Governing.Reason, shortened.Governing.Percent));
        Assert.Equal((TakeUpTask.Shorten, 2), (shortened.TakeUp!.Task, shortened.TakeUp.PitchesToRemove));
        Assert.Equal(200.0 / 120, shortened.TakeUp.Percent, 1e-12);
    }

    [Fact]
    public void Figures_from_memory_never_govern() =>
        Gen.Select(Gen.Int[0, ChainFamily.All.Count - 1].Select(i => ChainFamily.All[i]), Gen.Bool, Gen.Bool, Gen.Bool,
            Gen.Int[5, 200]).Sample((family, fixedCentres, parallel, lifts, teeth) =>
        {
            var verdict = LimitRules.For(new LimitCase
            {
                Family = family,
                FixedCentres = fixedCentres,
                Parallel = parallel,
                Lifts = lifts,
                SprocketTeeth = [teeth],
            });
            return verdict.Governing.IsVerified && verdict.AlsoHold.All(l => l.IsVerified)
                && verdict.Governing.Percent <= verdict.AlsoHold.Select(l => l.Percent).DefaultIfEmpty(9).Min()
                && verdict.Advice.Where(l => !l.IsVerified).All(l => l.Source.Contains("memory", StringComparison.Ordinal));
        });

    [Fact]
    public void Figures_from_memory_are_shown_as_advice()
    {
        Assert.Contains(LimitRules.For(new LimitCase { Family = ChainFamily.Named("double_pitch") }).Advice, l =>
            l is { Percent: 1, IsVerified: false });
        Assert.Contains(LimitRules.For(new LimitCase { FixedCentres = true }).Advice, l =>
            l is { Percent: 0.7, IsVerified: false });
        Assert.Contains(LimitRules.For(new LimitCase { Family = ChainFamily.Named("round_link") }).Advice, l =>
            l is { Percent: 2, IsVerified: false });
    }

    [Fact]
    public void The_plants_own_limit_wins_with_its_reason_and_the_rules_beside_it()
    {
        var card =
            new ChainCard { Name = "K1", PitchMm = 25.4, LimitPercent = 2.2, LimitSetReason = "noise in the office above" };
        var verdict = LimitRules.For(card);

        Assert.Equal((2.2, LimitReason.SetByPlant), (verdict.Governing.Percent, verdict.Governing.Reason));
        Assert.Contains("noise in the office above", verdict.Governing.Rule.ToString(), StringComparison.Ordinal);
        Assert.Equal(3, verdict.AlsoHold[0].Percent);
    }

    [Fact]
    public void A_card_carries_all_that_the_rules_ask_for()
    {
        var card = new ChainCard
        {
            Name = "K1",
            PitchMm = 25.4,
            Pitches = 100,
            SprocketTeeth = [19, 76],
            FixedCentres = true,
            RunsInParallel = true,
            Timing = true,
            Positioning = true,
            HighPerformance = true,
            Lifts = true,
            TakeUpTravelMm = 5,
        };
        var verdict = LimitRules.For(card);

        // By geometry: 5 mm of take-up of a chain that must not be shortened, 200 x 5/(100 x 25.4) %.
        Assert.Equal(0.3937, verdict.Governing.Percent, 4);
        Assert.Equal(
            Enum.GetValues<LimitReason>().Except([LimitReason.SetByPlant]).Order(),
            verdict.AlsoHold.Append(verdict.Governing).Select(l => l.Reason).Distinct().Order());
    }

    [Theory]
    [InlineData(4)]
    [InlineData(0)]
    [InlineData(1001)]
    public void No_sprocket_has_so_many_teeth(int teeth)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new LimitCase { SprocketTeeth = [teeth] });
        Assert.Throws<ArgumentOutOfRangeException>(() => new ChainCard { Name = "K1", PitchMm = 25.4, SprocketTeeth = [teeth] });
    }

    private static (double Percent, LimitReason Reason) Governing(LimitCase @case) =>
        LimitRules.For(@case).Governing is var limit ? (limit.Percent, limit.Reason) : default;
}
