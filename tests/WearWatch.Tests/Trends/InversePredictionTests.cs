using System.Globalization;
using System.Text.Json;
using WearWatch.Benchmarks.Rivals;
using WearWatch.Trends;

namespace WearWatch.Tests.Trends;

/// <summary>
/// The interval with which the simpler methods answer in the table of docs/method.md must be as good as theirs can be.
/// </summary>
public sealed class InversePredictionTests
{
    // Oracle: Graybill & Iyer 1996, pp. 431-434, printed to so many digits as the tolerance says (half a unit of the last one).
    [Theory]
    [InlineData("graybill_iyer_thermometer_95", 1, 0.005, 0.05)]
    [InlineData("graybill_iyer_thermometer_90", 1, 0.05, 0.005)]
    [InlineData("graybill_iyer_chamber_99", 0, 0.05, 0.005)]
    [InlineData("graybill_iyer_crystal_90", 0, 0.005, 0.005)]
    public void Intervals_agree_with_the_book(string id, int furtherObservations, double ofEstimate, double ofEnds)
    {
        var example = RegressionData.Case("inverse_prediction.json", id);
        var published = example.GetProperty("published");
        var between = Assert.IsType<InversePrediction.Between>(Predict(example, furtherObservations));
        Assert.InRange(between.Estimate - published.Number("estimate"), -1.01 * ofEstimate, 1.01 * ofEstimate);
        Assert.InRange(between.Lower - published.Number("lower"), -1.01 * ofEnds, 1.01 * ofEnds);
        Assert.InRange(between.Upper - published.Number("upper"), -1.01 * ofEnds, 1.01 * ofEnds);
    }

    // Oracle: Massart et al. 1997, chapter 8, example 7: estimate and its standard error by the delta method, printed to six
    // decimals.
    [Theory]
    [InlineData("massart_ex7_15", 1)]
    [InlineData("massart_ex7_90", 1)]
    [InlineData("massart_ex7_90_mean_of_5", 5)]
    public void Standard_errors_agree_with_the_book(string id, int furtherObservations)
    {
        var example = RegressionData.Case("inverse_prediction.json", id);
        var prediction = Predict(example, furtherObservations);
        Assert.Equal(example.GetProperty("published").Number("estimate"), prediction.Estimate, 5e-6);
        Assert.Equal(example.GetProperty("published").Number("se"), prediction.StandardError, 5e-7);
    }

    // Oracle: R 4.2.2 on each of the data sets, all digits (tests/data/SOURCES.md). 9 digits: two quantiles of Student's t differ
    // in the 11th.
    [Fact]
    public void All_bounded_cases_agree_with_R()
    {
        var bounded = RegressionData.Json("inverse_prediction.json").GetProperty("cases").EnumerateArray()
            .Where(c => c.GetProperty("computed").GetProperty("bounded").GetBoolean()).ToArray();
        Assert.Equal(9, bounded.Length);
        foreach (var example in bounded)
        {
            var computed = example.GetProperty("computed");
            var further = example.TryGetProperty("m", out var m) ? m.GetInt32() : IsMeanResponse(example) ? 0 : 1;
            var between = Assert.IsType<InversePrediction.Between>(Predict(example, further));
            Digits.Agree(9, computed.Number("estimate"), between.Estimate);
            Digits.Agree(9, computed.Number("lower"), between.Lower);
            Digits.Agree(9, computed.Number("upper"), between.Upper);
            Digits.Agree(9, computed.Number("g"), between.G);
            Digits.Agree(9, computed.Number("se_wald"), between.StandardError);
        }
    }

    // Oracle: R on a chain that hardly wears: estimate 93,467 h, g = 27.4. A symmetric interval would say +-487,009 h.
    [Fact]
    public void A_slope_that_may_be_zero_has_no_upper_limit()
    {
        var example = RegressionData.Case("inverse_prediction.json", "unbounded_trap");
        var open = Assert.IsType<InversePrediction.NoUpperLimit>(Predict(example, furtherObservations: 0));
        Digits.Agree(9, example.GetProperty("computed").Number("estimate"), open.Estimate);
        Digits.Agree(9, example.GetProperty("computed").Number("g"), open.G);
    }

    // Oracle: the definition. At the lower end, a line through that crossing is just as compatible with the points as the
    // confidence asks.
    [Fact]
    public void Where_there_is_no_upper_limit_the_lower_one_still_holds()
    {
        var example = RegressionData.Case("inverse_prediction.json", "unbounded_trap");
        var line = Line(example);
        var open = Assert.IsType<InversePrediction.NoUpperLimit>(Predict(example, furtherObservations: 0));
        const double StudentT95With3 = 3.18244630528371; // R: qt(.975, 3)
        Assert.InRange(open.Lower!.Value, 800, open.Estimate);
        Digits.Agree(8, StudentT95With3, (3 - line.At(open.Lower.Value)) / line.StandardErrorAt(open.Lower.Value));
    }

    [Fact]
    public void A_level_among_the_points_excludes_nothing()
    {
        var line = Line(RegressionData.Case("inverse_prediction.json", "unbounded_trap"));
        Assert.Null(
            Assert.IsType<InversePrediction.NoUpperLimit>(InversePrediction.Of(line, level: 0.21, confidence: 0.95)).Lower);
    }

    [Fact]
    public void A_flat_line_never_arrives()
    {
        var flat = Assert.IsType<TrendFit<StraightLine>.Fitted>(StraightLine.Fit([0, 1, 2, 3], [0.2, 0.3, 0.3, 0.2])).Trend;
        Assert.True(double.IsPositiveInfinity(
            Assert.IsType<InversePrediction.NoUpperLimit>(InversePrediction.Of(flat, 3, 0.9)).Estimate));
    }

    // Oracle: W. Q. Meeker, L. A. Escobar 1998, example 13.10 (docs/references.md [15]): hours at which fifteen lasers reach 10
    // %, printed to the hour. Ends of the 95 % intervals: R 4.2.2.
    [Fact]
    public void Fifteen_lasers_reach_their_threshold_at_the_published_hours()
    {
        var laser = RegressionData.Json("degradation_laser.json");
        var paths = File.ReadLines(RegressionData.PathOf("degradation_laser.csv")).Skip(1).Select(l => l.Split(','))
            .GroupBy(cells => cells[1]).Select(unit => (
                Hours: unit.Select(c => double.Parse(c[2], CultureInfo.InvariantCulture)).ToArray(),
                Increase: unit.Select(c => double.Parse(c[0], CultureInfo.InvariantCulture)).ToArray()));
        var crossings = paths.Select(path => Assert.IsType<InversePrediction.Between>(InversePrediction.Of(
            Assert.IsType<TrendFit<StraightLine>.Fitted>(StraightLine.Fit(path.Hours, path.Increase)).Trend, level: 10,
            confidence: 0.95))).ToArray();

        Assert.Equal(laser.Numbers("published_pseudo_failure"), crossings.Select(c => Math.Round(c.Estimate)));
        Assert.All(laser.GetProperty("per_unit").EnumerateArray().Zip(crossings), pair =>
        {
            Digits.Agree(9, pair.First.Number("lower95"), pair.Second.Lower);
            Digits.Agree(9, pair.First.Number("upper95"), pair.Second.Upper);
        });
    }

    private static bool IsMeanResponse(JsonElement example) =>
        example.GetProperty("kind").GetString()!.StartsWith("mean response", StringComparison.Ordinal);

    private static InversePrediction Predict(JsonElement example, int furtherObservations) =>
        InversePrediction.Of(Line(example), example.Number("y0"), example.Number("level"), furtherObservations);

    private static StraightLine Line(JsonElement example) =>
        Assert.IsType<TrendFit<StraightLine>.Fitted>(StraightLine.Fit(example.Numbers("x"), example.Numbers("y"))).Trend;
}
