using WearWatch.Gauging.Studies;

namespace WearWatch.Tests.Gauging.Studies;

public sealed class BiasStudyTests
{
    // Five lengths, each measured twelve times: docs/references.md [47], linearity example (data and figures from memory; the
    // published averages, slope and constant follow from the data, which speaks for both).
    private static readonly (double Known, double[] Measured)[] Published =
    [
        (2, [2.7, 2.5, 2.4, 2.5, 2.7, 2.3, 2.5, 2.5, 2.4, 2.4, 2.6, 2.4]),
        (4, [5.1, 3.9, 4.2, 5.0, 3.8, 3.9, 3.9, 3.9, 3.9, 4.0, 4.1, 3.8]),
        (6, [5.8, 5.7, 5.9, 5.9, 6.0, 6.1, 6.0, 6.1, 6.4, 6.3, 6.0, 6.1]),
        (8, [7.6, 7.7, 7.8, 7.7, 7.8, 7.8, 7.8, 7.7, 7.8, 7.5, 7.6, 7.7]),
        (10, [9.1, 9.3, 9.5, 9.3, 9.4, 9.5, 9.5, 9.5, 9.6, 9.2, 9.3, 9.4]),
    ];

    [Theory]
    [InlineData(0, 0.491667)]
    [InlineData(1, 0.125)]
    [InlineData(2, 0.025)]
    [InlineData(3, -0.291667)]
    [InlineData(4, -0.616667)]
    public void The_published_bias_of_each_length_comes_out(int length, double bias) =>
        Assert.Equal(bias, BiasStudy.Of([.. Readings(Published[length])])!.Bias, 1e-6);

    [Fact]
    public void The_published_line_of_bias_over_length_comes_out()
    {
        var study = BiasStudy.Of([.. Published.SelectMany(Readings)])!;

        Assert.Equal(-0.131667, study.Linearity!.Slope, 1e-6);
        Assert.Equal(0.736667, study.Linearity.Intercept, 1e-6);
        Assert.True(study.SlopeP < 1e-6);
        Assert.Contains("grows or shrinks with the length", study.Advice.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_tool_that_is_off_by_as_much_throughout_has_a_bias_and_no_slope()
    {
        KnownReading[] readings =
            [new(500, 500.61), new(500, 500.59), new(1000, 1000.6), new(1000, 1000.62), new(1500, 1500.6), new(1500, 1500.58)];
        var study = BiasStudy.Of(readings)!;

        Assert.Equal(0.6, study.Bias, 1e-9);
        Assert.Contains("too long throughout", study.Advice.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void One_length_measured_often_has_a_bias_but_no_line()
    {
        var study = BiasStudy.Of([new(500, 500.1), new(500, 499.9), new(500, 500.0)])!;

        Assert.Null(study.Linearity);
        Assert.Equal(1, study.BiasP, 1e-9);
        Assert.Contains("No bias", study.Advice.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void One_reading_says_nothing() => Assert.Null(BiasStudy.Of([new(500, 500.1)]));

    private static IEnumerable<KnownReading> Readings((double Known, double[] Measured) length) =>
        length.Measured.Select(m => new KnownReading(length.Known, m));
}
