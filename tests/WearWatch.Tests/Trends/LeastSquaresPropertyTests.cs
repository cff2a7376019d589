using CsCheck;
using WearWatch.Trends;

namespace WearWatch.Tests.Trends;

/// <summary>
/// What least squares must do on any data; hours and elongations as readings have them, at random; a failure names its seed.
/// </summary>
public sealed class LeastSquaresPropertyTests
{
    private static readonly Gen<(double X, double Y, int Weight)[]> Points =
        Gen.Select(Gen.Int[0, 200].Select(i => 100.0 * i), Gen.Int[-1000, 8000].Select(i => 0.001 * i), Gen.Int[1, 4]).Array[3,
            40];

    // Oracle: a point of weight w is w points of weight 1 in the estimates (not in the degrees of freedom).
    [Fact]
    public void A_weight_counts_as_so_many_equal_points() => Points.Sample(points =>
    {
        var repeated = points.SelectMany(p => Enumerable.Repeat(p, p.Weight)).ToArray();
        var weighted = Line(points, points.Select(p => (double)p.Weight));
        var plain = Line(repeated, null);
        return (weighted, plain) is (null, null) || (Near(weighted!.Slope, plain!.Slope) && Near(weighted.MeanY, plain.MeanY)
            && Near(weighted.SumSquaresX / 1e8, plain.SumSquaresX / 1e8));
    });

    // Oracle: the definition of least squares: what is left over is uncorrelated with the predictors.
    [Fact]
    public void Residuals_are_orthogonal_to_the_abscissae() => Points.Sample(points =>
    {
        var line = Line(points, null);
        return line is null || Math.Abs(points.Sum(p => (p.Y - line.At(p.X)) * (p.X - line.MeanX)))
            <= 1e-9 * Math.Sqrt(line.SumSquaresX * points.Length) * 10;
    });

    [Fact]
    public void Units_do_not_matter() => Points.Sample(points =>
    {
        var hours = Line(points, null);
        var thousands = Line([.. points.Select(p => (p.X / 1000, p.Y, p.Weight))], null);
        return (hours, thousands) is (null, null) || (Near(hours!.Slope * 1000, thousands!.Slope)
            && Near(hours.SlopeStandardError * 1000, thousands.SlopeStandardError));
    });

    [Fact]
    public void A_point_of_weight_zero_is_not_there()
    {
        var with = Assert.IsType<TrendFit<StraightLine>.Fitted>(
            StraightLine.Fit([0, 1, 2, 9], [0, 1, 3, 99], [1, 1, 1, 0])).Trend;
        var without = Assert.IsType<TrendFit<StraightLine>.Fitted>(StraightLine.Fit([0, 1, 2], [0, 1, 3])).Trend;
        Assert.Equal(without, with);
    }

    [Fact]
    public void Too_few_points_are_said_so()
    {
        Assert.IsType<TrendFit<StraightLine>.Undetermined>(StraightLine.Fit([1], [1]));
        Assert.IsType<TrendFit<StraightLine>.Undetermined>(StraightLine.Fit([4, 4, 4], [1, 2, 3]));
    }

    [Fact]
    public void Two_points_give_a_line_that_does_not_know_its_error() =>
        Assert.True(
            double.IsNaN(Assert.IsType<TrendFit<StraightLine>.Fitted>(StraightLine.Fit([0, 1], [0, 1])).Trend.ResidualVariance));

    [Fact]
    public void Columns_of_unequal_length_are_the_caller_s_mistake()
    {
        Assert.Throws<ArgumentException>(() => StraightLine.Fit([1, 2], [1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => StraightLine.Fit([1, 2], [1, 2], [1, -1]));
    }

    private static StraightLine? Line((double X, double Y, int Weight)[] points, IEnumerable<double>? weights) =>
        StraightLine.Fit([.. points.Select(p => p.X)], [.. points.Select(p => p.Y)], weights is null ? [] : [.. weights])
            is TrendFit<StraightLine>.Fitted { Trend: var line } ? line : null;

    // Eight digits of a wear rate in percent an hour, and rounding where points happen to lie on a line.
    private static bool Near(double left, double right) =>
        Math.Abs(left - right) <= 1e-9 * (1e-3 + Math.Abs(left) + Math.Abs(right));
}
