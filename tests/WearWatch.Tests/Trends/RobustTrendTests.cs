using WearWatch.Trends;

namespace WearWatch.Tests.Trends;

public sealed class RobustTrendTests
{
    // Oracle: R 4.2.2, MASS::rlm(psi = psi.bisquare) on a chain with a gross error at 1,500 h (tests/data/SOURCES.md). 4 digits: rlm stops
    // when the residuals move by less than 1e-4 of their size; ours goes on to 1e-10.
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

    // Oracle: least squares on the points that are left, and Fieller's interval of them (checked elsewhere against published values).
    [Fact]
    public void The_limit_s_crossing_is_judged_without_the_outliers()
    {
        var (hours, elongations, _) = Chain();
        int[] kept = [1, 2, 3, 4, 5, 7, 8, 9];
        var rest = Fitted(StraightLine.Fit([.. kept.Select(i => hours[i])], [.. kept.Select(i => elongations[i])]));
        var crossing = Fitted(Fitted(TukeyLine.Fit(hours, elongations)).Reaches(hours, elongations, level: 3, confidence: 0.9));
        Assert.Equal(InversePrediction.Of(rest, 3, 0.9), crossing);
        Assert.InRange(crossing.Estimate, 7_700, 7_950);
    }

    // Oracle: R 4.2.2 on the same chain and on the cases of mann_kendall_theil_sen.json; 12 digits, it is a middle of quotients. Helsel & Hirsch
    // 2002, chapter 10 (slope 1, from memory) is among them.
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

    // Oracle: the case worked by hand at mathcs.holycross.edu: S = 54, Z = 2.9058, one-sided p = 0.0018; the others R 4.2.2.
    [Theory]
    [InlineData("holy_cross_by_hand")]
    [InlineData("helsel_hirsch_ch10")]
    [InlineData("nile")]
    [InlineData("laser_unit_1")]
    public void Mann_Kendall_agrees_with_hand_and_R(string id)
    {
        var (example, _, y) = Series(id);
        var expected = example.GetProperty("computed");
        var test = MannKendall.Of(y);
        Assert.Equal(expected.Number("S"), test.Score);
        Digits.Agree(12, expected.Number("var"), test.Variance);
        Digits.Agree(12, expected.Number("Z"), test.Z);
        Digits.Agree(9, expected.Number("p_two_sided"), test.PTwoSided); // what the normal tail of MathNet is good to
    }

    [Fact]
    public void The_case_worked_by_hand_has_the_published_result()
    {
        var test = MannKendall.Of(Series("holy_cross_by_hand").Y);
        Assert.Equal(54, test.Score);
        Assert.Equal(2.9058, test.Z, 5e-5);
        Assert.Equal(0.0018, test.PTwoSided / 2, 5e-5);
    }

    [Fact]
    public void Equal_values_have_no_trend() => Assert.Equal(0, MannKendall.Of([1, 1, 1]).Z);

    // Three readings of which two agree by chance: without the tool's scatter the third would be an outlier.
    [Fact]
    public void Known_scatter_keeps_three_readings_from_throwing_one_out()
    {
        double[] hours = [0.5, 1.0, 1.5];
        double[] elongations = [0.30, 0.40, 0.47];
        Assert.DoesNotContain(true, Enumerable.Range(0, 3).Select(Fitted(TukeyLine.Fit(hours, elongations, scaleFloor: 0.03)).IsOutlier));
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
        var example = RegressionData.Case("mann_kendall_theil_sen.json", id);
        var y = example.Numbers("y");
        return (example, example.TryGetProperty("x", out _) ? example.Numbers("x") : [.. Enumerable.Range(1, y.Length).Select(i => (double)i)], y);
    }

    private static TTrend Fitted<TTrend>(TrendFit<TTrend> fit) => Assert.IsType<TrendFit<TTrend>.Fitted>(fit).Trend;
}
