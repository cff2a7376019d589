
using WearWatch.Dashboard.Kit.Charts;

namespace WearWatch.Dashboard.Tests.Charts;

public sealed class WearChartPlanTests
{
    [Fact]
    public void What_was_measured_and_the_limit_lie_inside_the_picture()
    {
        var plan = Plan(Picture());
        foreach (var reading in plan.Picture.Readings)
        {
            Assert.InRange(plan.Hours.At(reading.Hours), plan.Left, plan.Right);
            Assert.InRange(plan.Percent.At(reading.Percent + reading.ErrorPercent), plan.Top, plan.Bottom);
        }

        Assert.InRange(plan.LimitY, plan.Top, plan.Bottom);
    }

    [Fact]
    public void The_crossings_are_marked_on_the_limit_early_before_middle()
    {
        var crossings = Plan(Picture()).Crossings;
        Assert.Equal(["early", "middle"], crossings.Take(2).Select(c => c.Name.ToString()));
        Assert.True(crossings[0].X < crossings[1].X);
        Assert.Equal("4 Jan 2027", crossings[0].Date);
    }

    [Fact]
    public void A_forecast_without_end_is_drawn_without_a_number_that_is_none()
    {
        var picture = Picture() with
        {
            Levels = [new(1.2, 6000, 6000, 6000, 6000, 6000),
            new(3, 9000, 14000, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity)]
        };
        var plan = Plan(picture);
        Assert.DoesNotContain("NaN", plan.OuterBand + plan.InnerBand + plan.MiddleLine);
        Assert.DoesNotContain("∞", plan.OuterBand + plan.InnerBand + plan.MiddleLine);
        Assert.StartsWith("M", plan.OuterBand);
    }

    [Fact]
    public void A_far_limit_does_not_squeeze_the_readings_into_a_corner()
    {
        var picture = Picture() with
        {
            Levels = [new(1.2, 6000, 6000, 6000, 6000, 6000), new(3, 500_000, 600_000, 700_000, 800_000, 900_000)],
        };
        Assert.True(Plan(picture).Hours.To <= 4 * 6100);
    }

    [Fact]
    public void A_chain_without_readings_or_forecast_still_has_axes()
    {
        var plan = Plan(new WearPicture { Readings = [], Track = [], Levels = [], LimitPercent = 3, NowH = 0 });
        Assert.Equal(("", "", ""), (plan.OuterBand, plan.TrackLine, plan.MiddleLine));
        Assert.NotEmpty(plan.Hours.Ticks(5));
        Assert.NotEmpty(plan.Percent.Ticks(5));
    }

    [Theory]
    [InlineData(0, 10_000, 5, 6)]
    [InlineData(0, 3.24, 5, 7)]
    [InlineData(-0.3, 3.1, 5, 7)]
    public void Ticks_fall_on_round_values(double from, double to, int about, int expected)
    {
        var ticks = new LinearScale(from, to, 0, 100).Ticks(about);
        Assert.Equal(expected, ticks.Count);
        Assert.All(ticks, t => Assert.InRange(t, from - 1e-9, to + 1e-9));
    }

    [Fact]
    public void A_scale_maps_its_ends_onto_its_pixels()
    {
        var scale = new LinearScale(2, 4, 100, 0);
        Assert.Equal((100, 50, 0), (scale.At(2), scale.At(3), scale.At(4)));
    }

    private static WearChartPlan Plan(WearPicture picture) => new(picture, 860, 380, 12);

    private static WearPicture Picture() => new()
    {
        Readings = [new(2000, 0.5, 0.1, false, "a"), new(6000, 1.2, 0.1, false, "b")],
        Track = [new(2000, 0.5), new(6000, 1.2)],
        Levels = [new(1.2, 6000, 6000, 6000, 6000, 6000), new(3, 9000, 10_500, 12_000, 13_500, 16_000)],
        LimitPercent = 3,
        NowH = 6100,
        Dates = ("4 Jan 2027", "9 Mar 2027", "1 Jun 2027"),
    };
}
