using WearWatch.Trends;

namespace WearWatch.Tests.Trends;

/// <summary>The straight line of least squares against certified results.</summary>
public sealed class CertifiedRegressionTests
{
    // Oracle: NIST/ITL Statistical Reference Datasets, linear regression, certified to 15 digits (docs/references.md [14]).
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

    private static TTrend Fitted<TTrend>(TrendFit<TTrend> fit) => Assert.IsType<TrendFit<TTrend>.Fitted>(fit).Trend;
}
