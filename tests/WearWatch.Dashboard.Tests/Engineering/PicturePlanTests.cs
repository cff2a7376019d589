using WearWatch.Dashboard.Engineer;
using WearWatch.Dashboard.Engineer.LifeData;
using WearWatch.Dashboard.Kit.Charts;
using WearWatch.Lives;

namespace WearWatch.Dashboard.Tests.Engineering;

public sealed class PicturePlanTests
{
    private static readonly ChartFrame Frame = new(600, 400);
    private static readonly Life[] Lives =
        [Life(1000), Life(1500), Life(2200, LifeEnd.StillRunning), Life(2500), Life(3600), Life(4000, LifeEnd.ReplacedBefore)];

    private static Life Life(double hours, LifeEnd end = LifeEnd.ReachedLimit) => new(hours, end);

    [Fact]
    public void The_survival_stairs_begin_at_all_and_step_down_at_each_failure()
    {
        var plan = new SurvivalPlan([GroupOfLives.Of("all", Lives, LifeLaw.Weibull)], Frame);
        var trace = Assert.Single(plan.Traces);
        Assert.StartsWith($"M{Frame.Left:0.##} {Frame.Top:0.##}H", trace.Line, StringComparison.Ordinal);
        Assert.Equal(4, trace.Line.Count(c => c == 'V'));
        Assert.Equal(2, trace.Suspensions.Count(c => c == 'M'));
        Assert.EndsWith("Z", trace.Band, StringComparison.Ordinal);
    }

    [Fact]
    public void Bands_are_left_out_where_they_would_cover_each_other()
    {
        var group = GroupOfLives.Of("all", Lives, LifeLaw.Weibull);
        Assert.All(new SurvivalPlan([group, group, group], Frame).Traces, t => Assert.Empty(t.Band));
    }

    [Fact]
    public void On_its_own_paper_a_law_is_a_line_through_its_scale()
    {
        var group = GroupOfLives.Of("all", Lives, LifeLaw.Weibull);
        var plan = new PaperPlan([group], LifeLaw.Weibull, Frame);
        var fit = group.Fit!;
        double Slope(double a, double b) => (plan.Y(b) - plan.Y(a)) / (plan.X(fit.HoursAt(b)) - plan.X(fit.HoursAt(a)));
        Assert.Equal(Slope(0.05, 0.3), Slope(0.3, 0.9), 9);
    }

    [Fact]
    public void Every_failure_lies_on_the_paper_and_no_suspension_does()
    {
        var plan = new PaperPlan([GroupOfLives.Of("all", Lives, LifeLaw.Lognormal)], LifeLaw.Lognormal, Frame);
        var points = Assert.Single(plan.Traces).Points;
        Assert.Equal(4, points.Count);
        Assert.All(points, p => Assert.True(plan.X(p.Hours) >= Frame.Left && plan.X(p.Hours) <= Frame.Right
            && plan.Y(p.ShareFailed) >= Frame.Top && plan.Y(p.ShareFailed) <= Frame.Bottom));
    }

    [Fact]
    public void Groups_without_a_failure_still_have_their_picture()
    {
        var group = GroupOfLives.Of("new", [Life(300, LifeEnd.StillRunning)], LifeLaw.Weibull);
        Assert.Empty(Assert.Single(new PaperPlan([group], LifeLaw.Weibull, Frame).Traces).Line);
        Assert.NotEmpty(Assert.Single(new SurvivalPlan([group], Frame).Traces).Line);
    }

    [Fact]
    public void Five_groups_have_five_marks() =>
        Assert.Equal(5, Enumerable.Range(0, 5).Select(g => GroupMark.Path(g, 10, 10)).Distinct().Count());
}
