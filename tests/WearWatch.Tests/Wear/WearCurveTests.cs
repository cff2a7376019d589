using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

public sealed class WearCurveTests
{
    private static readonly WearCurve Curve = new(0.25, 0.25, [2, 1, 0.5]);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.25, 0.5)]
    [InlineData(0.5, 1)]
    [InlineData(0.75, 1.25)]
    [InlineData(1, 1.375)]
    [InlineData(3, 2.375)] // beyond the last step by its slope
    [InlineData(-0.1, -0.2)] // before the first by that
    public void The_scale_goes_from_step_to_step_and_back(double percent, double clock)
    {
        Assert.Equal(clock, Curve.FromElongation(percent), 12);
        Assert.Equal(percent, Curve.ToElongation(clock), 12);
    }

    // Oracle: wear by the root of the hours, e = 0.25 + sqrt(h): the hours between elongations are differences of squares. The
    // curve is known at its knots and straight between them, hence the tolerance.
    [Fact]
    public void The_curve_of_a_plant_is_how_long_its_chains_took_whether_they_ran_out_or_not()
    {
        var chains = Enumerable.Range(1, 12)
            .Select(i => Rooted(0.8 + 0.04 * i, upToPercent: i % 3 == 0 ? 3 : 1.6 + 0.1 * i)).ToList();

        var curve = CurveLearning.Of([.. chains.Select(c => StepHours.Of(c, Steady))])!;

        var first = curve.FromElongation(1) - curve.FromElongation(0.5);
        var second = curve.FromElongation(2) - curve.FromElongation(1.5);
        Assert.Equal((1.75 * 1.75 - 1.25 * 1.25) / (0.75 * 0.75 - 0.25 * 0.25), second / first, 0.25);
        Assert.Equal(12, curve.Chains);
    }

    [Fact]
    public void Four_chains_show_no_curve() => Assert.Null(
        CurveLearning.Of([.. Enumerable.Range(1, 4).Select(i => StepHours.Of(Rooted(0.8 + 0.1 * i, 3), Steady))]));

    [Fact]
    public void Readings_that_fall_back_are_pooled_and_a_step_beyond_the_last_is_not_told()
    {
        Observation[] read = [new(1000, 0.5, 0.03, 0), new(2000, 0.9, 0.03, 1), new(3000, 0.7, 0.03, 2), new(4000, 1.2, 0.03, 3)];
        var told = StepHours.Of(new(WearPrior.Broad, new(true, 4000, false, read)), Steady);

        Assert.Equal(2.5, told.ThousandHoursTo(0.8), 12);
        Assert.True(double.IsNaN(told.ThousandHoursTo(1.3)));
        Assert.True(double.IsNaN(told.Logs[4]));
    }

    private static WearConstants Steady { get; } = WearConstants.Default with { RunInPercent = 0, RunInDeviationPercent = 0 };

    private static TellingChain Rooted(double pace, double upToPercent)
    {
        Observation[] read =
        [
            .. Enumerable.Range(1, 60).Select(i => 0.2 * i)
                .Select((h, i) => new Observation(1000 * h, 0.25 + pace * Math.Sqrt(h), 0.03, i))
                .TakeWhile(o => o.ElongationPercent <= upToPercent),
        ];
        return new(WearPrior.Broad, new FittedChain(true, read[^1].HoursSinceFitting, true, read));
    }
}
