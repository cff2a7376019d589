using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Learning.Tests;

public sealed class FleetModelTests
{
    private static readonly FleetModel Plain = A.Training(SimulatedFleet.Chains).Model;

    private static readonly FleetChain[] SteppedFleet = A.Fleet(600, SteppedLaw, spread: 0.15);

    private static readonly FleetTrainingOutcome.Trained WithTrees = A.Training(SteppedFleet);

    [Fact]
    public void Trees_are_used_where_they_win_on_unseen_chains()
    {
        Assert.True(WithTrees.Report.UsesTrees && WithTrees.Model.UsesTrees);
        Assert.True(WithTrees.Report.LineAndTreesError < 0.7 * WithTrees.Report.LineError);
    }

    [Fact]
    public void Trees_are_left_out_where_the_log_linear_part_says_it_all() => Assert.False(Plain.UsesTrees);

    // Oracle: the law that made the fleet. A half: trees of four leaves round a step's corner off.
    [Fact]
    public void Trees_bring_the_prior_nearer_to_the_truth()
    {
        double Error(Func<ChainCard, double> expected) =>
            Math.Sqrt(SteppedFleet.Average(c => Math.Pow(expected(c.Card) - SteppedLaw(c.Card), 2)));
        Assert.True(Error(card => WithTrees.Model.PriorFor(card).MeanLogRate) < 0.5 * Error(WithTrees.Model.LineLogRate));
    }

    [Fact]
    public void The_pipeline_gives_the_bits_of_the_direct_evaluation()
    {
        foreach (var chain in SimulatedFleet.Chains)
            Assert.Equal(BitConverter.DoubleToInt64Bits(Plain.LineLogRate(chain.Card)),
                BitConverter.DoubleToInt64Bits(Plain.ExpectedLogRate(chain.Card)));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_saved_model_comes_back_with_the_same_bits(bool trees)
    {
        var model = trees ? WithTrees.Model : Plain;
        using var file = new MemoryStream();
        model.Save(file);
        file.Position = 0;
        var loaded = FleetModel.Load(file);
        Assert.Equal(model.Version, loaded.Version);
        Assert.Equal(model.UsesTrees, loaded.UsesTrees);
        Assert.All(SimulatedFleet.Chains, chain => Assert.Equal(model.PriorFor(chain.Card), loaded.PriorFor(chain.Card)));
    }

    [Fact]
    public void A_damaged_file_is_refused()
    {
        using var file = new MemoryStream();
        Plain.Save(file);
        Assert.Throws<InvalidDataException>(() => FleetModel.Load(new MemoryStream(file.ToArray()[..^200])));
        Assert.Throws<InvalidDataException>(() => FleetModel.Load(new MemoryStream("no model"u8.ToArray())));
    }

    // What one engine shared by threads gets wrong silently (measured: 6 % of answers).
    [Fact]
    public void Many_threads_get_the_answers_that_one_gets()
    {
        FleetChain[] chains = [.. Enumerable.Repeat(SimulatedFleet.Chains, 20).SelectMany(c => c)];
        double[] alone = [.. chains.Select(c => WithTrees.Model.PriorFor(c.Card).MeanLogRate)];
        var together = new double[chains.Length];
        Parallel.For(0, chains.Length, new ParallelOptions { MaxDegreeOfParallelism = 8 },
            i => together[i] = WithTrees.Model.PriorFor(chains[i].Card).MeanLogRate);
        Assert.Equal(alone, together);
    }

    [Fact]
    public void A_card_that_tells_nothing_is_the_fleet_s_average_and_wider()
    {
        var untold = Plain.PriorFor(A.Card(load: null, speed: null, lubrication: null, dust: null));
        var ordinary = Plain.PriorFor(A.Card());
        var average = SimulatedFleet.Chains.Average(c => Plain.PriorFor(c.Card).MeanLogRate);
        Assert.Equal(average, untold.MeanLogRate, 0.1);
        Assert.True(untold.VarianceLogRate > 2 * ordinary.VarianceLogRate);
        Assert.True(untold.VarianceLogRate < 1.0);
    }

    [Fact]
    public void Each_thing_that_a_card_does_not_tell_widens_the_prior()
    {
        var told = Plain.PriorFor(A.Card()).VarianceLogRate;
        Assert.All(
            new[] { A.Card(load: null), A.Card(speed: null), A.Card(lubrication: null), A.Card(dust: null) },
            card => Assert.True(Plain.PriorFor(card).VarianceLogRate > told + 0.005));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_factors_and_the_average_rate_multiply_to_the_prior(bool trees)
    {
        var model = trees ? WithTrees.Model : Plain;
        var card = A.Card(load: 0.9, speed: 2.5, lubrication: LubricationState.Dry, dust: null, line: "L03");
        var product = model.Explain(card).Aggregate(model.AverageRatePercentPer1000Hours, (rate, factor) => rate * factor.Factor);
        Assert.Equal(Math.Exp(model.PriorFor(card).MeanLogRate), product, 1e-12);
        Assert.Equal(["dust"], model.Explain(card).Where(f => !f.Told && f.Input != "line").Select(f => f.Input));
        Assert.True(model.Explain(card).Single(f => f.Input == "lubrication").Factor > 1);
    }

    [Fact]
    public void A_card_beyond_the_fleet_s_experience_says_so()
    {
        Assert.Empty(Plain.OutsideTrainingRange(A.Card()));
        Assert.Equal(["relative load", "speed"], Plain.OutsideTrainingRange(A.Card(load: 9, speed: 40)));
        Assert.Contains("outside its experience in speed", Plain.PriorFor(A.Card(speed: 40)).Source.ToString());
        var leaf = A.Card() with { Family = ChainFamily.Named("leaf") };
        Assert.Equal(["family"], Plain.OutsideTrainingRange(leaf));
        Assert.True(Plain.PriorFor(leaf).VarianceLogRate > 1);
    }

    [Fact]
    public void A_fleet_that_half_tells_its_loads_still_learns_them()
    {
        var half = SimulatedFleet.Chains.Select((chain, i) => i % 2 == 0
            ? chain
            : chain with { Card = chain.Card with { Duty = chain.Card.Duty with { RelativeLoad = null } } });
        var trained = A.Training([.. half]);
        // Oracle: the constant 1.0 that made the fleet; half of the chains tell of it, and the ridge pulls towards zero.
        Assert.Equal(1.0, trained.Report.Effects.Single(e => e.Name == "ln(load / 0.5)").Effect, 0.3);
        Assert.Equal(0.0, trained.Report.Effects.Single(e => e.Name == "relative load not told").Effect, 0.3);
    }

    // A step that no straight line in logarithms has: badly oiled and fast together wear four times as fast again.
    private static double SteppedLaw(ChainCard card) =>
        Math.Log(0.1) + (card.Duty is { Lubrication: >= LubricationState.Poor, SpeedMetresPerSecond: > 1.8 } ? 1.4 : 0);
}
