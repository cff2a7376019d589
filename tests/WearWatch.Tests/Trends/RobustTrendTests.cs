using WearWatch.Trends;

namespace WearWatch.Tests.Trends;

public sealed class RobustTrendTests
{
    // Oracle: R 4.2.2, MASS::rlm(psi = psi.bisquare) on a chain with a gross error at 1,500 h (tests/data/SOURCES.md). 4 digits:
    // rlm stops when the residuals move by less than 1e-4 of their size; ours goes on to 1e-10.
    [Fact]
    public void A_Tukey_line_agrees_with_R()
    {
        var (hours, elongations, expected) = Chain();
        var line = Fitted(TukeyLine.Fit(hours, elongations));
        Digits.Agree(4, expected.Numbers("b")[0], line.Intercept);
        Digits.Agree(4, expected.Numbers("b")[1], line.Slope);
        Assert.Equal(expected.Number("s"), line.Scale, 2e-5);
        Assert.All(expected.Numbers("w").Zip(line.Weights), pair => Assert.Equal(pair.First, pair.Second, 3e-3));
    }

    // Same oracle: weights of zero at the first reading (run-in) and at the gross error, above 0.6 elsewhere.
    [Fact]
    public void A_gross_error_and_the_run_in_are_outliers()
    {
        var (hours, elongations, _) = Chain();
        var line = Fitted(TukeyLine.Fit(hours, elongations));
        Assert.Equal([0, 6], Enumerable.Range(0, hours.Length).Where(line.IsOutlier));
    }

    // Oracle: R 4.2.2 on the same chain and on the cases of theil_sen.json; 12 digits, it is a middle of quotients. Helsel &
    // Hirsch 2002, chapter 10 (slope 1, from memory) is among them.
    [Theory]
    [InlineData("holy_cross_by_hand")]
    [InlineData("helsel_hirsch_ch10")]
    [InlineData("nile")]
    [InlineData("laser_unit_1")]
    public void Theil_Sen_lines_agree_with_R(string id)
    {
        var (example, x, y) = Series(id);
        var expected = example.GetProperty("theil_sen");
        var line = Fitted(TheilSenLine.Fit(x, y));
        Digits.Agree(12, expected.Number("slope"), line.Slope);
        Digits.Agree(12, expected.Number("intercept_median_resid"), line.Intercept);
        Assert.Equal(expected.Number("n_slopes"), line.Pairs);
    }

    // Three readings of which two agree by chance: without the tool's scatter the third would be an outlier.
    [Fact]
    public void Known_scatter_keeps_three_readings_from_throwing_one_out()
    {
        double[] hours = [0.5, 1.0, 1.5];
        double[] elongations = [0.30, 0.40, 0.47];
        Assert.DoesNotContain(
            true, Enumerable.Range(0, 3).Select(Fitted(TukeyLine.Fit(hours, elongations, scaleFloor: 0.03)).IsOutlier));
    }

    [Fact]
    public void Points_exactly_on_a_line_but_one_give_the_line()
    {
        var line = Fitted(TukeyLine.Fit([0, 1, 2, 3, 4], [0, 1, 9, 3, 4]));
        Assert.Equal((0, 1), (line.Intercept, line.Slope));
        Assert.True(line.IsOutlier(2));
    }

    [Fact]
    public void Readings_at_one_hour_determine_no_line()
    {
        Assert.IsType<TrendFit<TukeyLine>.Undetermined>(TukeyLine.Fit([5, 5, 5], [0.1, 0.2, 0.3]));
        Assert.IsType<TrendFit<TheilSenLine>.Undetermined>(TheilSenLine.Fit([5], [0.1]));
    }

    [Fact]
    public void Repeated_hours_do_not_disturb_a_line()
    {
        var line = Fitted(TheilSenLine.Fit([0, 0, 1, 1, 2], [0, 0, 1, 1, 2]));
        Assert.Equal((0, 1, 8), (line.Intercept, line.Slope, line.Pairs));
    }

    private static (double[] Hours, double[] Elongations, System.Text.Json.JsonElement Bisquare) Chain()
    {
        var data = RegressionData.Json("robust_regression.json");
        return (data.Numbers("hours"), data.Numbers("elong_pct"), data.GetProperty("bisquare"));
    }

    private static (System.Text.Json.JsonElement Case, double[] X, double[] Y) Series(string id)
    {
        var example = RegressionData.Case("theil_sen.json", id);
        var y = example.Numbers("y");
        return (example, example.TryGetProperty("x", out _)
            ? example.Numbers("x")
            : [.. Enumerable.Range(1, y.Length).Select(i => (double)i)], y);
    }

    private static TTrend Fitted<TTrend>(TrendFit<TTrend> fit) => Assert.IsType<TrendFit<TTrend>.Fitted>(fit).Trend;
}
