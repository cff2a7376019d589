using WearWatch.Lives;

namespace WearWatch.Tests.Lives;

public sealed class PlottedLifeTests
{
    // R. B. Abernethy, The New Weibull Handbook, figure 2-5: adjusted ranks 1.125, 2.438, 3.750, 5.063, 6.375 (from memory).
    [Fact]
    public void Suspensions_move_the_ranks_of_later_failures_as_in_Abernethy()
    {
        var points = PlottedLife.Of(PublishedLives.WeibullCase("abernethy_fig2_5").Lives());
        double[] ranks = [1.125, 2.4375, 3.75, 5.0625, 6.375];
        Assert.Equal([30, 49, 82, 90, 96], points.Select(p => p.Hours));
        Assert.All(points.Zip(ranks), p => Assert.Equal((p.Second - 0.3) / 8.4, p.First.ShareFailed, 12));
    }

    // Published there: shape 2.024 and scale 94.998 h, the regression of ln t on the height of these points (not maximum
    // likelihood).
    [Fact]
    public void A_line_through_the_points_is_the_one_that_Abernethy_prints()
    {
        var points = PlottedLife.Of(PublishedLives.WeibullCase("abernethy_fig2_5").Lives());
        var (heights, logs) = (points.Select(p => LifeLaw.Weibull.Height(p.ShareFailed)).ToArray(),
            points.Select(p => Math.Log(p.Hours)).ToArray());
        var (height, log) = (heights.Average(), logs.Average());
        var slope = heights.Zip(logs, (h, l) => (h - height) * (l - log)).Sum() / heights.Sum(h => (h - height) * (h - height));
        Assert.Equal(2.024, 1 / slope, 2e-3); // Benard's approximation against exact median ranks moves the third digit
        Assert.Equal(94.998, Math.Exp(log - slope * height), 3e-2);
    }

    // L. G. Johnson's table of median ranks for n = 5 (from memory): 12.94, 31.38, 50, 68.62, 87.06 %. Benard misses the second
    // by 0.1 point.
    [Fact]
    public void Five_failures_lie_on_the_median_ranks()
    {
        var points = PlottedLife.Of([A.Life(5), A.Life(1), A.Life(2), A.Life(4), A.Life(3)]);
        double[] table = [0.1294, 0.3138, 0.5, 0.6862, 0.8706];
        Assert.All(points.Zip(table), p => Assert.Equal(p.Second, p.First.ShareFailed, 1.1e-3));
    }

    [Fact]
    public void Suspensions_have_no_point() =>
        Assert.Empty(PlottedLife.Of([A.Life(1, failed: false), A.Life(2, failed: false)]));

    // Height zero: 63.2 % on Weibull paper, the median on lognormal paper. Height +1 there is 84.13 % (any normal table).
    [Fact]
    public void Both_papers_have_their_zero_where_the_law_has_its_scale()
    {
        Assert.Equal(0, LifeLaw.Weibull.Height(1 - Math.Exp(-1)), 12);
        Assert.Equal(0, LifeLaw.Lognormal.Height(0.5), 12);
        Assert.Equal(0.8413, LifeLaw.Lognormal.ShareFailed(1), 4);
    }
}
