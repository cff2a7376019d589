using WearWatch.Trends;

namespace WearWatch.Tests.Trends;

/// <summary>Oracle of all of these: NIST/ITL Statistical Reference Datasets, linear regression, certified to 15 digits (docs/references.md [14]).</summary>
public sealed class CertifiedRegressionTests
{
    // 12 digits: the sums about the means lose about two of the fifteen that are certified.
    [Fact]
    public void A_straight_line_agrees_with_Norris_to_twelve_digits()
    {
        var norris = RegressionData.Json("strd_norris.json");
        var certified = norris.GetProperty("certified");
        var line = Fitted(StraightLine.Fit(norris.Numbers("x"), norris.Numbers("y")));
        Digits.Agree(12, certified.Numbers("b")[0], line.Intercept);
        Digits.Agree(12, certified.Numbers("b")[1], line.Slope);
        Digits.Agree(12, certified.Numbers("se")[0], line.InterceptStandardError);
        Digits.Agree(12, certified.Numbers("se")[1], line.SlopeStandardError);
        Digits.Agree(12, certified.Number("residual_sd"), line.ResidualStandardDeviation);
        Digits.Agree(12, certified.Number("r2"), line.RSquared);
        Assert.Equal(34, line.DegreesOfFreedom);
    }

    // 13 digits: refinement solves the system that double holds, so only the rounding of the data and of the result is left. Standard
    // errors are not refined and lose the condition of the scaled columns, which is harmless here.
    [Theory]
    [InlineData("norris", 1)]
    [InlineData("pontius", 2)]
    [InlineData("wampler4", 5)]
    public void A_polynomial_agrees_to_thirteen_digits(string set, int degree)
    {
        var data = RegressionData.Json($"strd_{set}.json");
        var certified = data.GetProperty("certified");
        var fit = Fitted(LinearRegression.FitPolynomial(data.Numbers("x"), data.Numbers("y"), degree));
        for (var i = 0; i <= degree; i++)
        {
            Digits.Agree(13, certified.Numbers("b")[i], fit.Coefficients[i]);
            Digits.Agree(13, certified.Numbers("se")[i], fit.StandardError(i));
        }

        Digits.Agree(13, certified.Number("residual_sd"), fit.ResidualStandardDeviation);
        Digits.Agree(13, certified.Number("r2"), fit.RSquared);
    }

    // Points that lie on the polynomial to the last digit: certified residual zero. Wampler 2 has y that double
    // rounds, which costs the middle coefficients two digits. Residuals: below 1e-12 of the largest y (3.4e6 and 63).
    [Theory]
    [InlineData("wampler1", 14, 1e-6)]
    [InlineData("wampler2", 13, 1e-12)]
    public void Points_on_a_polynomial_give_it_back(string set, double digits, double residual)
    {
        var data = RegressionData.Json($"strd_{set}.json");
        var fit = Fitted(LinearRegression.FitPolynomial(data.Numbers("x"), data.Numbers("y"), degree: 5));
        Assert.All(fit.Coefficients.Zip(data.GetProperty("certified").Numbers("b")), pair => Digits.Agree(digits, pair.Second, pair.First));
        Assert.InRange(fit.ResidualStandardDeviation, 0, residual);
        Assert.InRange(fit.StandardError(0), 0, residual);
        Digits.Agree(14, 1, fit.RSquared);
    }

    // Six predictors that are nearly combinations of each other: the set on which many programs fail.
    [Fact]
    public void Nearly_collinear_predictors_agree_with_Longley()
    {
        var longley = RegressionData.Json("strd_longley.json");
        var certified = longley.GetProperty("certified");
        double[][] rows = [.. longley.GetProperty("X").EnumerateArray().Select(row => row.EnumerateArray().Select(v => v.GetDouble()).ToArray())];
        double[][] predictors = [.. Enumerable.Range(0, 6).Select(column => rows.Select(row => row[column]).ToArray())];
        var fit = Fitted(LinearRegression.Fit(predictors, longley.Numbers("y")));
        for (var i = 0; i < 7; i++)
        {
            Digits.Agree(13, certified.Numbers("b")[i], fit.Coefficients[i]);
            Digits.Agree(13, certified.Numbers("se")[i], fit.StandardError(i));
        }

        Digits.Agree(13, certified.Number("residual_sd"), fit.ResidualStandardDeviation);
        Digits.Agree(13, certified.Number("r2"), fit.RSquared);
    }

    private static TTrend Fitted<TTrend>(TrendFit<TTrend> fit) => Assert.IsType<TrendFit<TTrend>.Fitted>(fit).Trend;
}
