using WearWatch.Gauging;

namespace WearWatch.Tests.Gauging;

public sealed class StrandSpreadTests
{
    [Fact]
    public void One_strand_has_nothing_to_differ_from() => Assert.Null(StrandSpread.Of([(1, E(0.5)), (1, E(0.9))]));

    [Fact]
    public void The_worst_place_of_each_strand_counts()
    {
        var spread = StrandSpread.Of([(1, E(0.5)), (2, E(0.4)), (2, E(0.8)), (3, E(0.6))])!;

        Assert.Equal((1, 2), (spread.LeastStrand, spread.MostStrand));
        Assert.Equal(0.3, spread.DifferencePercent, 12);
    }

    [Fact]
    public void Honest_strands_of_equal_wear_are_seldom_told_of()
    {
        // Oracle: the range of three normals exceeds 3 sqrt(2) sd in 0.75 % (studentized range, R: 1 - ptukey(3 * sqrt(2), 3,
        // Inf)).
        var chance = new Random(11);
        var told = Enumerable.Range(0, 20_000).Count(_ => StrandSpread.Of(
            Enumerable.Range(1, 3).Select(s => (s, E(1 + 0.08 * Normal(chance)))))!.IsUneven);

        Assert.InRange(told / 20_000.0, 0.005, 0.010);
    }

    private static Elongation E(double percent) => new(percent, 0.08, 0.05);

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
