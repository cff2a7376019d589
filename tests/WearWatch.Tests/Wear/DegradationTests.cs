using WearWatch.Trends;

namespace WearWatch.Tests.Wear;

public sealed class DegradationTests
{
    // Oracle: docs/references.md [15], 15 lasers, level 6 %. Bar: 0.80 of the bands hold; of least squares with Fieller's
    // interval at most 0.60 do. The error is that of the middle over the time left.
    [Theory]
    [InlineData(0.25)]
    [InlineData(0.50)]
    [InlineData(0.75)]
    public void On_published_lasers_the_bands_hold_though_no_laser_ever_taught_the_constants(double lifeShare)
    {
        var asked = Paths("regression", "degradation_laser.csv", r => (Number(r[2]), Number(r[0]))).AskedAt(lifeShare).ToList();

        Assert.Equal(15, asked.Count);
        Assert.InRange(asked.Average(a => a.Early <= a.TrueTime && a.TrueTime <= a.Late ? 1 : 0), 0.80, 1);
        Assert.InRange(Median.Of([.. asked.Select(a => Math.Abs(a.Middle - a.TrueTime) / (a.TrueTime - a.NowTime))]), 0, 0.25);
    }

    // Oracle: docs/references.md [15], 21 cracks, level 1.6 in. Cracks grow faster and faster from the start, which no constant
    // here knows: the middle comes late, and the bands have to be wide enough to say so.
    [Theory]
    [InlineData(0.25)]
    [InlineData(0.50)]
    [InlineData(0.75)]
    public void On_published_cracks_that_accelerate_all_along_the_bands_still_hold(double lifeShare)
    {
        // Growth in inches and millions of cycles, brought to the size of percent and running hours.
        var asked = Paths("wear", "degradation_alloyA_crack.csv", r => (1e5 * Number(r[2]), 5 * (Number(r[0]) - 0.9)), level: 3.5)
            .AskedAt(lifeShare).ToList();

        Assert.InRange(asked.Average(a => a.Early <= a.TrueTime && a.TrueTime <= a.Late ? 1 : 0), 0.80, 1);
    }

    private static double Number(string text) => RecordedFleet.Number(text);

    private static DegradationPaths Paths(string folder, string file, Func<string[], (double, double)> point, double level = 6) =>
        new([.. RecordedFleet.Rows(folder, file).GroupBy(r => r[1]).Select(g => g.Select(point).ToArray())], level);
}
