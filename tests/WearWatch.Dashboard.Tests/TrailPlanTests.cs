using WearWatch.Dashboard.Kit.Charts;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests;

public sealed class TrailPlanTests
{
    [Fact]
    public void Nothing_is_drawn_of_a_single_reading() => Assert.False(new TrailPlan([Step(100, 2000)]).IsDrawn);

    [Fact]
    public void The_line_of_the_readings_rises_from_the_first_to_the_last()
    {
        var plan = new TrailPlan([Step(0, 4000), Step(1000, 4200), Step(2000, 4100)]);
        Assert.Equal(FormattableString.Invariant(
            $"M{plan.Across.At(0):0.#} {plan.Up.At(0):0.#}L{plan.Across.At(2000):0.#} {plan.Up.At(2000):0.#}"), plan.Reading);
    }

    [Fact]
    public void A_late_end_out_of_sight_runs_off_the_top()
    {
        var plan = new TrailPlan([Step(0, 4000), Step(1000, 4200) with { LateAtHours = null }]);
        var highest = plan.Band.Split('L', 'M').Where(p => p.Length > 0)
            .Min(p => double.Parse(p.TrimEnd('Z').Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture));
        Assert.True(highest < plan.Up.PixelTo);
    }

    [Fact]
    public void A_step_whose_middle_is_not_in_sight_is_left_out() =>
        Assert.False(new TrailPlan([Step(0, 4000), Step(1000, 4200) with { MiddleAtHours = null }]).IsDrawn);

    private static ForecastStep Step(double hours, double middle) =>
        new(new Observation(hours, 1, 0.05, 0), 0.8 * middle, middle, 1.2 * middle);
}
