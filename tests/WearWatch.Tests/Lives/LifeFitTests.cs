using CsCheck;
using WearWatch.Lives;

namespace WearWatch.Tests.Lives;

public sealed class LifeFitTests
{
    public static TheoryData<string> Cases =>
        ["nist_8.4.1.3", "abernethy_c5", "abernethy_fig2_5", "jqt_1997_29_1", "shock_absorber_all_modes", "alloy_T7987"];

    // R stops its own Newton at a relative change of 1e-9 in ln L, which leaves about half of the digits of the estimates.
    private const double FromR = 2e-6;

    // R survival 3.5-3: survreg(Surv(time, event) ~ 1, dist = "weibull").
    [Theory]
    [MemberData(nameof(Cases))]
    public void Estimates_errors_and_quantiles_are_those_of_R(string id)
    {
        var (r, fit) = (PublishedLives.WeibullCase(id).GetProperty("R_survreg"), Weibull(id));
        Assert.Equal(r.Number("events"), fit.Failures);
        Assert.Equal(r.Number("n"), fit.Failures + fit.Suspensions);
        Assert.Equal(r.Number("loglik"), fit.LogLikelihood, 1e-9);
        AssertClose(r.Number("beta"), fit.Steepness);
        AssertClose(r.Number("eta"), fit.ScaleHours);
        AssertClose(r.Number("se_beta"), fit.SteepnessStandardError);
        AssertClose(r.Number("se_eta"), fit.ScaleStandardErrorHours);
        foreach (var (p, hours) in r.GetProperty("quantile_p").Numbers().Zip(r.GetProperty("quantiles").Numbers()))
            AssertClose(hours, fit.HoursAt(p));
    }

    // R survival 3.5-3: survreg(Surv(time, event) ~ 1, dist = "lognormal").
    [Theory]
    [InlineData("shock_absorber_all_modes")]
    [InlineData("alloy_T7987")]
    public void Lognormal_estimates_are_those_of_R(string id)
    {
        var one = PublishedLives.WeibullCase(id);
        var (r, fit) = (one.GetProperty("R_survreg_lognormal"), Fitted(one.Lives(), LifeLaw.Lognormal));
        Assert.Equal(r.Number("loglik"), fit.LogLikelihood, 1e-9);
        AssertClose(r.Number("intercept"), Math.Log(fit.MedianHours));
        AssertClose(r.Number("scale"), 1 / fit.Steepness);
        AssertClose(r.Number("se_intercept"), fit.ScaleStandardErrorHours / fit.ScaleHours);
        AssertClose(r.Number("se_log_scale"), fit.SteepnessStandardError / fit.Steepness);
    }

    // Meeker and Escobar prefer the lognormal for the alloy (1998, p. 131).
    [Fact]
    public void The_lognormal_fits_the_alloy_better_than_Weibull() => Assert.True(
        Fitted(PublishedLives.WeibullCase("alloy_T7987").Lives(), LifeLaw.Lognormal).LogLikelihood
            > Weibull("alloy_T7987").LogLikelihood);

    // Oracle: base R, profiles by optimize() over dweibull/pweibull and dlnorm/plnorm, ends by uniroot(); the shock absorbers.
    //   o <- function(f,i) optimize(f,i,maximum=TRUE,tol=1e-12)$objective
    //   q <- function(tp,p) o(function(ls) {s<-exp(ls); ll(s, tp/(-log(1-p))^(1/s))}, log(c(.2,20)))
    //   uniroot(function(x) q(x,p)-(best-qchisq(level,1)/2), c(mid/5,mid), tol=1e-11)
    // optimize() finds the profile to about 1e-9 and the steepest ends to 1e-5.
    [Theory]
    [InlineData(0.95, 1.89853217, 4.77139078, 9371.20239, 17291.23794, 20791.9982, 32274.7052)]
    [InlineData(0.90, 2.07865895, 4.48767782, 10102.5267, 16709.4338, 21346.9780, 30479.2551)]
    public void Weibull_likelihood_intervals_are_those_of_R(
        double level, double low, double high, double b10Low, double b10High, double medianLow, double medianHigh)
    {
        var fit = Weibull("shock_absorber_all_modes");
        AssertClose(low, high, fit.SteepnessInterval(level));
        AssertClose(b10Low, b10High, fit.HoursInterval(0.10, level));
        AssertClose(medianLow, medianHigh, fit.HoursInterval(0.50, level));
    }

    [Theory]
    [InlineData(0.95, 1.16599483, 2.72514921, 9401.67176, 16281.41682, 20150.5502, 37523.6111)]
    [InlineData(0.90, 1.27218427, 2.58387375, 10012.3469, 15696.4305, 20828.0268, 34582.9625)]
    public void Lognormal_likelihood_intervals_are_those_of_R(
        double level, double low, double high, double b10Low, double b10High, double medianLow, double medianHigh)
    {
        var fit = Fitted(PublishedLives.WeibullCase("shock_absorber_all_modes").Lives(), LifeLaw.Lognormal);
        AssertClose(low, high, fit.SteepnessInterval(level));
        AssertClose(b10Low, b10High, fit.HoursInterval(0.10, level));
        AssertClose(medianLow, medianHigh, fit.HoursInterval(0.50, level));
    }

    [Fact]
    public void The_scale_interval_is_that_of_the_share_at_height_zero()
    {
        var fit = Weibull("nist_8.4.1.3");
        Assert.Equal(fit.HoursInterval(1 - Math.Exp(-1), 0.9).Low, fit.ScaleInterval(0.9).Low, 1e-6);
        Assert.True(fit.ScaleInterval(0.9).Contains(fit.ScaleHours));
    }

    [Fact]
    public void One_failure_is_too_few() => Assert.Equal(
        new LifeFitOutcome.TooFewFailures(1, 2), LifeFit.To([A.Life(10), A.Life(20, failed: false)], LifeLaw.Weibull));

    [Fact]
    public void Failures_all_at_once_with_nothing_longer_have_no_steepness() => Assert.Equal(
        new LifeFitOutcome.NoSpread(10), LifeFit.To([A.Life(10), A.Life(10), A.Life(9, failed: false)], LifeLaw.Weibull));

    [Fact]
    public void Two_failures_and_a_long_suspension_are_fitted_with_a_wide_interval()
    {
        var fit = Fitted([A.Life(1000), A.Life(1100), A.Life(9000, failed: false)], LifeLaw.Weibull);
        Assert.True(fit.HoursInterval(0.5, 0.9) is { Low: > 0, High: < double.PositiveInfinity } interval
            && interval.High > 3 * interval.Low);
    }

    [Fact]
    public void Share_failed_and_hours_undo_each_other()
    {
        foreach (var law in new[] { LifeLaw.Weibull, LifeLaw.Lognormal })
        {
            var fit = Fitted(PublishedLives.WeibullCase("alloy_T7987").Lives(), law);
            foreach (var share in new[] { 1e-6, 0.01, 0.1, 0.5, 0.9, 0.999 })
                Assert.Equal(share, fit.ShareFailedAt(fit.HoursAt(share)), 1e-9);
        }
    }

    [Theory]
    [InlineData(25.4)]
    [InlineData(1e-4)]
    public void The_unit_of_time_does_not_matter(double factor)
    {
        var lives = PublishedLives.WeibullCase("nist_8.4.1.3").Lives();
        var (fit, other) =
            (Fitted(lives, LifeLaw.Weibull), Fitted([.. lives.Select(l => A.Life(l.Hours * factor, l.Failed))], LifeLaw.Weibull));
        Assert.Equal(fit.Steepness, other.Steepness, 1e-9);
        Assert.Equal(fit.B10Hours * factor, other.B10Hours, 1e-9 * other.B10Hours);
    }

    // Independent of any formula: no line nearby is likelier, and the ends of an interval are one chi-square away.
    [Fact]
    public void Random_lives_are_fitted_at_the_top_and_the_intervals_hold_the_estimate() =>
        Gen.Select(Gen.Double[0.5, 8], Gen.Double[1, 60], Gen.Int[3, 30], Gen.Int[0, int.MaxValue - 1])
            .Sample((shape, scale, count, seed) =>
        {
            var chance = new Random(seed);
            var lives = Enumerable.Range(0, count).Select(_ => scale * Math.Pow(-Math.Log(1 - chance.NextDouble()), 1 / shape))
                .Select(t => t > scale * 1.2 ? A.Life(scale * 1.2, failed: false) : A.Life(Math.Max(t, 1e-6))).ToList();
            if (LifeFit.To(lives, LifeLaw.Weibull) is not LifeFitOutcome.Fitted { Fit: var fit }) return;
            Assert.True(fit.SteepnessInterval(0.9).Contains(fit.Steepness));
            Assert.True(fit.HoursInterval(0.1, 0.9).Contains(fit.B10Hours));
            Assert.True(LogLikelihood(lives, fit.Steepness, fit.ScaleHours)
                >= LogLikelihood(lives, fit.Steepness * 1.01, fit.ScaleHours));
            Assert.True(LogLikelihood(lives, fit.Steepness, fit.ScaleHours)
                >= LogLikelihood(lives, fit.Steepness, fit.ScaleHours * 0.99));
        }, iter: 200);

    // Simulator truth: 300 plants of 40 chains, shape 3, scale 8,000 h, observed for 9,000 h. An exact 90 % interval would hold
    // in 270 +- 5.2; likelihood intervals of 40 lives are known to run a little short.
    [Fact]
    public void Nine_of_ten_likelihood_intervals_hold_the_true_B10()
    {
        var chance = new Random(20261125);
        var truth = 8000 * Math.Pow(-Math.Log(0.9), 1 / 3.0);
        var held = Enumerable.Range(0, 300).Count(_ => Fitted(
            [.. Enumerable.Range(0, 40).Select(_ => 8000 * Math.Pow(-Math.Log(1 - chance.NextDouble()), 1 / 3.0))
                .Select(t => A.Life(Math.Min(t, 9000), t < 9000))], LifeLaw.Weibull).HoursInterval(0.1, 0.9).Contains(truth));
        Assert.InRange(held, 255, 285);
    }

    // Slow independent way: the Weibull profile equation, each life a term of its own, solved by bisection.
    [Fact]
    public void Twenty_thousand_lives_taken_together_in_cells_are_fitted_as_if_they_were_not()
    {
        var chance = new Random(3);
        var lives = Enumerable.Range(0, 20_000).Select(_ => 8000 * Math.Pow(-Math.Log(1 - chance.NextDouble()), 1 / 2.5))
            .Select(t => A.Life(Math.Min(t, 9000), t < 9000)).ToList();
        var failures = lives.Where(l => l.Failed).Select(l => Math.Log(l.Hours / 9000)).ToList();
        double Excess(double shape)
        {
            var powers = lives.ConvertAll(l => (Log: Math.Log(l.Hours / 9000), Power: Math.Pow(l.Hours / 9000, shape)));
            return powers.Sum(p => p.Power * p.Log) / powers.Sum(p => p.Power) - 1 / shape - failures.Average();
        }

        var (low, high) = (1.0, 5.0);
        while (high - low > 1e-9) (low, high) = Excess((low + high) / 2) < 0 ? ((low + high) / 2, high) : (low, (low + high) / 2);
        var scale = 9000 * Math.Pow(lives.Sum(l => Math.Pow(l.Hours / 9000, low)) / failures.Count, 1 / low);
        var fit = Fitted(lives, LifeLaw.Weibull);
        Assert.Equal(low, fit.Steepness, 2e-5 * low); // a cell leaves out (a w)^2/24 of its terms: 6e-6 here
        Assert.Equal(scale, fit.ScaleHours, 2e-5 * scale);
    }

    private static double LogLikelihood(IEnumerable<Life> lives, double shape, double scale) => lives.Sum(l =>
        (l.Failed ? Math.Log(shape / scale) + (shape - 1) * Math.Log(l.Hours / scale) : 0) - Math.Pow(l.Hours / scale, shape));

    private static LifeFit Weibull(string id) => Fitted(PublishedLives.WeibullCase(id).Lives(), LifeLaw.Weibull);

    private static LifeFit Fitted(IReadOnlyCollection<Life> lives, LifeLaw law) =>
        Assert.IsType<LifeFitOutcome.Fitted>(LifeFit.To(lives, law)).Fit;

    private static void AssertClose(double expected, double actual) => Assert.Equal(expected, actual, FromR * Math.Abs(expected));

    private static void AssertClose(double low, double high, ConfidenceInterval interval)
    {
        Assert.Equal(low, interval.Low, 1e-5 * low);
        Assert.Equal(high, interval.High, 1e-5 * high);
    }
}
