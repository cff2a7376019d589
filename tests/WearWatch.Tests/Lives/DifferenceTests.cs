using WearWatch.Lives;

namespace WearWatch.Tests.Lives;

public sealed class DifferenceTests
{
    // Published: R. G. Newcombe, Statistics in Medicine 17 (1998) 873, table II, method 10: 56/70 less 48/80 is 0.0524 to 0.3339.
    [Fact]
    public void The_difference_of_two_shares_has_the_published_interval()
    {
        var difference = Difference.OfShares(new ObservedShare(48, 80), new ObservedShare(56, 70), 0.95)!.Value;
        Assert.Equal((0.2, 0.0524, 0.3339),
            (Math.Round(difference.Value, 4), Math.Round(difference.Interval.Low, 4), Math.Round(difference.Interval.High, 4)));
        Assert.True(difference.IsSeen);
    }

    // Simulator truth: the second group is e^0.3 of the first, spreads and sizes differ; 90 % of 400 with a deviation of 6.
    [Fact]
    public void The_ratio_of_means_holds_the_truth_as_often_as_it_says() => Assert.InRange(
        Enumerable.Range(1, 400).Count(seed =>
        {
            var chance = new Random(seed);
            var ratio = Difference.RatioOfMeans([.. Normals(chance, 9, 0, 0.2)], [.. Normals(chance, 25, 0.3, 0.5)], 0.90)!.Value;
            return ratio.Interval.Contains(Math.Exp(0.3));
        }), 342, 378);

    // Equal errors on both sides: the square root of two of one of them.
    [Fact]
    public void Distances_of_two_estimates_add_as_squares()
    {
        var ratio = Difference.Ratio((100, new(100 / 1.2, 120)), (150, new(150 / 1.2, 180)));
        Assert.Equal(1.5, ratio.Value, 12);
        Assert.Equal(1.5 * Math.Pow(1.2, Math.Sqrt(2)), ratio.Interval.High, 1e-12);
        Assert.Equal(1.5 / Math.Pow(1.2, Math.Sqrt(2)), ratio.Interval.Low, 1e-12);
    }

    // Simulator truth: chains that cost 1 with even odds in 1,000 h against three in four: a ratio of 1.5. 200 groups of 80
    // chains.
    [Fact]
    public void The_ratio_of_costs_holds_the_truth_about_as_often_as_it_says() => Assert.InRange(
        Enumerable.Range(1, 200).Count(seed =>
        {
            var chance = new Random(seed);
            (double, double)[] Chains(double odds) =>
                [.. Enumerable.Range(0, 80).Select(_ => (chance.NextDouble() < odds ? 1.0 : 0, 1000.0))];
            return Difference.RatioOfRates(Chains(0.5), Chains(0.75), 0.90)!.Value.Interval.Contains(1.5);
        }), 166, 192);

    [Fact]
    public void Nothing_against_something_is_no_difference()
    {
        Assert.Null(Difference.OfShares(new ObservedShare(0, 0), new ObservedShare(1, 2), 0.9));
        Assert.Null(Difference.RatioOfMeans([1], [1, 2], 0.9));
        Assert.Null(Difference.RatioOfRates([], [(1, 1000)], 0.9));
    }

    // Costs without hours, and hours of three chains, were once called different with an interval from 0 to 0.
    [Fact]
    public void Costs_differ_only_with_hours_on_both_sides_and_enough_of_them()
    {
        (double, double)[] many = [.. Enumerable.Range(0, 8).Select(i => (100.0 * (i % 3), 1000.0))];
        Assert.Null(Difference.RatioOfRates([.. many.Select(c => (c.Item1, 0.0))], many, 0.9));
        Assert.Null(Difference.RatioOfRates(many, many[..4], 0.9));
        Assert.Equal(1, Difference.RatioOfRates(many, many, 0.9)!.Value.Value, 12);
    }

    private static IEnumerable<double> Normals(Random chance, int count, double mean, double deviation) =>
        Enumerable.Range(0, count)
        .Select(_ =>
            mean + deviation * Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble()));
}
