using WearWatch.Chains;

namespace WearWatch.Learning.Tests;

/// <summary>Lines and lots that differ beyond their cards.</summary>
public sealed class FleetOriginTests
{
    // Lines differ by a known sixth of a factor e more than chains of a line do: found, with its size, and shrunk for a line of
    // few chains.
    [Fact]
    public void Lines_that_differ_beyond_their_cards_are_told_apart()
    {
        double OfLine(ChainCard card) => Math.Log(0.2) + (card.Line == "L3" ? 1.0 : 0);
        var trained = A.Training(A.Fleet(120, OfLine, spread: 0.2, lines: true));
        var ordinary = trained.Model.PriorFor(A.Card(line: "L1"));
        var fast = trained.Model.PriorFor(A.Card(line: "L3"));
        var unknown = trained.Model.PriorFor(A.Card(line: "never seen"));
        Assert.Equal(1.0, fast.MeanLogRate - ordinary.MeanLogRate, 0.2);
        Assert.InRange(unknown.MeanLogRate, ordinary.MeanLogRate, fast.MeanLogRate);
        Assert.True(unknown.VarianceLogRate > ordinary.VarianceLogRate + 0.02);
    }

    // Oracle: the law. One lot of forty wears at e^1.2 times the others, with some five chains of it: found, held back, and its
    // chains' prior moves.
    [Fact]
    public void A_bad_lot_is_told_from_the_others_and_held_back_by_how_few_chains_it_has()
    {
        double OfLot(ChainCard card) => Math.Log(0.2) + (card.Lot == "K3" ? 1.2 : 0);
        var trained = A.Training(A.Fleet(200, OfLot, spread: 0.2, lots: 40));
        var lots = trained.Report.Effects.Where(e => e.Name.StartsWith("lot ", StringComparison.Ordinal)).ToList();
        var bad = lots.Single(e => e.Name == "lot K3");
        Assert.Equal(lots.Max(e => e.Effect), bad.Effect);
        Assert.InRange(bad.Effect, 0.6, 1.2);
        Assert.True(bad.IsDriver);
        Assert.True(bad.Chains is > 1 and < 15);
        Assert.InRange(trained.Report.LotDeviation, 0.1, 0.4);
        Assert.True(trained.Model.PriorFor(A.Card() with { Lot = "K3" }).MeanLogRate > trained.Model
            .PriorFor(A.Card() with { Lot = "K4" }).MeanLogRate + 0.5);
        Assert.Contains(
            trained.Model.Explain(A.Card() with { Lot = "K3" }), f => f is { Input: "lot", Told: true, Factor: > 1.8 });
    }

    [Fact]
    public void Lots_that_do_not_differ_are_left_out() =>
        Assert.InRange(LogLinearRate.Fit(
            [.. A.Fleet(200, _ => Math.Log(0.2), spread: 0.3, lots: 40)
                .Select(c => (c.Card, Rate: (ChainRate.Shown)ChainRate.Of(c.Observations)))
                .Select(c => new RateSample(c.Card, c.Rate.LogRate, c.Rate.StandardError))]).OriginVariances.Sum(), 0, 0.02);
}
