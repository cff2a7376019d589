using System.Text.Json;

namespace WearWatch.Learning.Tests;

/// <summary>The regression of the fleet without penalties is ordinary least squares, for which certified results exist.</summary>
/// <remarks>
/// Oracle: NIST/ITL Statistical Reference Datasets, linear regression, certified to 15 digits (docs/references.md [14]).
/// </remarks>
public sealed class RidgeSolutionTests
{
    // Cholesky on the normal equations squares the condition of the columns, which are centred here as the fleet's are: that of a
    // line costs 3 of 15 digits, that of the parabola 6, that of Longley's six nearly collinear columns 8.
    [Theory]
    [InlineData("norris", 1, 12)]
    [InlineData("pontius", 2, 9)]
    [InlineData("longley", 6, 7)]
    public void Without_penalties_it_agrees_with_certified_least_squares(string set, int predictors, double digits)
    {
        using var file = JsonDocument.Parse(
            File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "regression", $"strd_{set}.json")));
        var data = file.RootElement;
        var y = Numbers(data.GetProperty("y"));
        var columns = Columns(data, predictors);
        double[] means = [.. columns.Select(c => c.Average())];
        double[][] rows = [.. y.Select((_, i) => (double[])[1, .. columns.Select((c, k) => c[i] - means[k])])];

        var solution = RidgeSolution.Solve(rows, y, [.. y.Select(_ => 1.0)], new double[predictors]);

        var b = solution.Coefficients;
        var residualSquares = rows.Zip(y, (row, value) => Math.Pow(value - LogLinearRate.Dot([.. b], row), 2)).Sum();
        var variance = residualSquares / (y.Length - b.Count);
        var certified = data.GetProperty("certified");
        var (coefficients, errors) = (Numbers(certified.GetProperty("b")), Numbers(certified.GetProperty("se")));
        Agrees(digits, coefficients[0], b[0] - means.Select((mean, k) => mean * b[k + 1]).Sum());
        for (var k = 1; k < b.Count; k++)
        {
            Agrees(digits, coefficients[k], b[k]);
            Agrees(digits, errors[k], Math.Sqrt(variance * solution.Covariance[k * b.Count + k]));
        }

        Agrees(digits, certified.GetProperty("residual_sd").GetDouble(), Math.Sqrt(variance));
        Assert.Equal(b.Count, solution.EffectiveCoefficients, 1e-5);
    }

    // Oracle: the definition. With one centred column the penalty stands beside the column's square.
    [Fact]
    public void A_penalty_holds_an_effect_back_and_leaves_the_average()
    {
        var solution = RidgeSolution.Solve([[1, -1], [1, 1]], [2, 4], [1, 1], [2]);
        Assert.Equal(3, solution.Coefficients[0], 1e-12);
        Assert.Equal(2.0 / (2 + 2), solution.Coefficients[1], 1e-12);
        Assert.Equal(1.5, solution.EffectiveCoefficients, 1e-12);
    }

    private static double[][] Columns(JsonElement data, int predictors) => data.TryGetProperty("X", out var matrix)
        ? [.. Enumerable.Range(0, predictors).Select(k => matrix.EnumerateArray().Select(row => row[k].GetDouble()).ToArray())]
        : [.. Enumerable.Range(1, predictors).Select(k => Numbers(data.GetProperty("x")).Select(x => Math.Pow(x, k)).ToArray())];

    private static double[] Numbers(JsonElement list) => [.. list.EnumerateArray().Select(v => v.GetDouble())];

    /// <summary>Agreement in decimal digits, as NIST counts it: the logarithm of the relative error.</summary>
    private static void Agrees(double digits, double certified, double actual)
    {
        var error = Math.Abs(actual - certified) / Math.Abs(certified);
        var reached = error == 0 ? 16 : -Math.Log10(error);
        Assert.True(reached >= digits,
            FormattableString.Invariant($"{actual:R} agrees with {certified:R} to {reached:0.0} digits, not {digits}."));
    }
}
