using CsCheck;
using WearWatch.Lives;

namespace WearWatch.Tests.Lives;

public sealed class SurvivalCurveTests
{
    public static TheoryData<string> Cases => ["freireich_6MP", "freireich_placebo", "aml_maintained", "aml_nonmaintained"];

    // R's figures have 15 digits; products and sums of at most 21 terms lose the last two or three.
    private const double FromR = 1e-12;

    // Published: 6-MP group, Freireich et al. 1963, table in D. R. Cox, D. Oakes, Analysis of Survival Data, 1984, p. 48
    // (from memory; reproduced by R), printed to 3 and 4 digits.
    [Fact]
    public void The_6MP_curve_and_its_Greenwood_errors_are_those_of_Cox_and_Oakes()
    {
        var one = PublishedLives.SurvivalCase("freireich_6MP");
        var (published, failures) = (one.GetProperty("published"), Failures(SurvivalCurve.Of(one.Lives())));
        Assert.Equal(published.GetProperty("t").Numbers(), failures.Select(s => s.Hours));
        Assert.Equal(published.GetProperty("surv").Numbers(), failures.Select(s => Math.Round(s.Surviving, 3)));
        Assert.Equal(published.GetProperty("se").Numbers(), failures.Select(s => Math.Round(s.StandardError, 4)));
    }

    // Published: maintained group of the AML trial, R. G. Miller, Survival Analysis, 1981, p. 49 (from memory), two digits; the
    // book cuts .368 to .37 and .184 to .18.
    [Fact]
    public void The_curve_of_the_maintained_group_is_that_of_Miller()
    {
        var one = PublishedLives.SurvivalCase("aml_maintained");
        var (published, failures) = (one.GetProperty("published"), Failures(SurvivalCurve.Of(one.Lives())));
        Assert.Equal(published.GetProperty("t").Numbers(), failures.Select(s => s.Hours));
        Assert.Equal(published.GetProperty("surv").Numbers(), failures.Select(s => Math.Round(s.Surviving, 2)));
    }

    // R survival 3.5-3: survfit(Surv(time, event) ~ 1, conf.type = ...), all columns.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Curve_errors_hazard_and_counts_are_those_of_R(string id)
    {
        var one = PublishedLives.SurvivalCase(id);
        var (r, steps) = (one.GetProperty("R"), SurvivalCurve.Of(one.Lives()).Steps);
        AssertAll(r.GetProperty("time").Numbers(), steps.Select(s => s.Hours));
        AssertAll(r.GetProperty("n_risk").Numbers(), steps.Select(s => (double)s.AtRisk));
        AssertAll(r.GetProperty("n_event").Numbers(), steps.Select(s => (double)s.Failed));
        AssertAll(r.GetProperty("surv").Numbers(), steps.Select(s => s.Surviving));
        AssertAll(r.GetProperty("greenwood_se").Numbers(), steps.Select(s => s.StandardError));
        AssertAll(r.GetProperty("nelson_aalen").Numbers(), steps.Select(s => s.CumulativeHazard));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void All_three_kinds_of_band_are_those_of_R(string id)
    {
        var one = PublishedLives.SurvivalCase(id);
        var (r, curve) = (one.GetProperty("R"), SurvivalCurve.Of(one.Lives()));
        foreach (var (kind, name) in new[] { (BandKind.Plain, "plain"), (BandKind.Log, "log"), (BandKind.LogLog, "loglog") })
        {
            var band = curve.Band(kind, 0.95);
            AssertAll(r.GetProperty(name + "_lower").Numbers(), band.Select(b => b.Low));
            AssertAll(r.GetProperty(name + "_upper").Numbers(), band.Select(b => b.High));
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Median_and_restricted_mean_are_those_of_R(string id)
    {
        var one = PublishedLives.SurvivalCase(id);
        var (r, curve) = (one.GetProperty("R"), SurvivalCurve.Of(one.Lives()));
        Assert.Equal(r.Number("median"), curve.MedianHours);
        var (mean, error) = curve.RestrictedMean();
        Assert.Equal(r.Number("rmean"), mean, 11);
        Assert.Equal(r.Number("rmean_se"), error, 11);
    }

    [Fact]
    public void A_curve_that_never_falls_to_one_half_has_no_median() =>
        Assert.Null(SurvivalCurve.Of([A.Life(10), A.Life(20, failed: false), A.Life(30, failed: false)]).MedianHours);

    [Fact]
    public void The_median_of_four_lives_lies_halfway_between_the_middle_two() =>
        Assert.Equal(25, SurvivalCurve.Of([A.Life(10), A.Life(20), A.Life(30), A.Life(40)]).MedianHours);

    [Fact]
    public void Suspensions_alone_leave_the_curve_and_its_band_at_one()
    {
        var curve = SurvivalCurve.Of([A.Life(10, failed: false), A.Life(20, failed: false)]);
        Assert.Equal(1, curve.SurvivingAt(20));
        Assert.All(curve.Band(BandKind.LogLog, 0.95), b => Assert.Equal(new ConfidenceInterval(1, 1), b));
    }

    [Fact]
    public void No_lives_make_a_curve_without_steps()
    {
        var curve = SurvivalCurve.Of([]);
        Assert.Empty(curve.Steps);
        Assert.Null(curve.MedianHours);
        Assert.Equal(1, curve.SurvivingAt(100));
    }

    // Special case equals the simpler method: without suspensions it is the empirical distribution.
    [Fact]
    public void Without_suspensions_the_curve_is_the_share_still_running() =>
        Gen.Double[1, 1000].Array[1, 40].Sample(hours =>
        {
            var curve = SurvivalCurve.Of([.. hours.Select(h => A.Life(h))]);
            foreach (var h in hours) Assert.Equal(hours.Count(x => x > h) / (double)hours.Length, curve.SurvivingAt(h), 12);
        });

    [Fact]
    public void Every_band_holds_the_curve_and_stays_between_zero_and_one() =>
        Gen.Select(Gen.Double[1, 1000], Gen.Bool).Array[1, 40].Sample(lives =>
        {
            var curve = SurvivalCurve.Of([.. lives.Select(l => A.Life(l.Item1, l.Item2))]);
            foreach (var kind in Enum.GetValues<BandKind>())
                foreach (var (step, band) in curve.Steps.Zip(curve.Band(kind, 0.9)))
                    Assert.True(double.IsNaN(band.Low) ||
                        (band.Low >= 0 && band.High <= 1 && band.Low <= step.Surviving + 1e-12
                            && band.High >= step.Surviving - 1e-12));
        });

    private static List<SurvivalStep> Failures(SurvivalCurve curve) => [.. curve.Steps.Where(s => s.Failed > 0)];

    private static void AssertAll(double[] expected, IEnumerable<double> actual)
    {
        var found = actual.ToArray();
        Assert.Equal(expected.Length, found.Length);
        for (var i = 0; i < expected.Length; i++)
            Assert.True(expected[i].Equals(found[i])
                || Math.Abs(expected[i] - found[i]) <= FromR, $"[{i}] {expected[i]} but {found[i]}");
    }
}
