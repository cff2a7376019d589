using WearWatch.Lives;

namespace WearWatch.Tests.Lives;

/// <summary>Whether a law fits is judged by the band of the lives themselves and by the other law.</summary>
public sealed class FitJudgementTests
{
    // The median ranks of a law, laid on that law, are its own quantiles: nothing can fit better.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Lives_that_lie_on_a_law_are_judged_to_fit_it_and_not_the_other(bool weibull)
    {
        var law = weibull ? LifeLaw.Weibull : LifeLaw.Lognormal;
        List<Life> lives = [.. Enumerable.Range(1, 200).Select(i =>
            A.Life(10_000 * Math.Exp(law.Height((i - 0.3) / 200.4) / 1.5), true))];
        var (own, other) = (Judge(lives, law), Judge(lives, weibull ? LifeLaw.Lognormal : LifeLaw.Weibull));
        Assert.True(own is { CanTell: true, Fits: true, OtherIsBetter: false, Outside: 0 });
        Assert.True(other.OtherIsBetter);
        Assert.Equal(-own.LogRatio!.Value, other.LogRatio!.Value, 9);
    }

    // Two kinds of failure in one group, half early and half late: the line runs through the middle, where no chain fails.
    [Fact]
    public void A_mixture_of_two_kinds_of_failure_fits_neither()
    {
        List<Life> lives = [.. Enumerable.Range(0, 60).Select(i => A.Life(i % 2 == 0 ? 1000 + i : 15_000 + 10 * i, true))];
        var judgement = Judge(lives, LifeLaw.Weibull);
        Assert.False(judgement.Fits);
        Assert.InRange(judgement.OutsideFromHours!.Value, 1000, 15_600);
    }

    // NIST/SEMATECH e-Handbook 8.4.1.3: the plot of these ten failures is called adequate there.
    [Fact]
    public void The_NIST_handbook_example_is_judged_to_fit()
    {
        var judgement = Judge(PublishedLives.WeibullCase("nist_8.4.1.3").Lives(), LifeLaw.Weibull);
        Assert.True(judgement is { CanTell: true, Fits: true });
        Assert.Equal(10, judgement.Moments);
    }

    // Hours with an interval and reliability with an interval are two readings of one likelihood: where the one ends, so does
    // the other.
    [Theory]
    [InlineData("nist_8.4.1.3")]
    [InlineData("abernethy_c5")]
    [InlineData("shock_absorber_all_modes")]
    public void The_interval_of_a_reliability_ends_where_that_of_its_hours_does(string id)
    {
        var fit = Assert.IsType<LifeFitOutcome.Fitted>(LifeFit.To(PublishedLives.WeibullCase(id).Lives(), LifeLaw.Weibull)).Fit;
        foreach (var share in new[] { 0.05, 0.1, 0.5 })
        {
            var hours = fit.HoursInterval(share, 0.9);
            Assert.Equal(1 - share, fit.ReliabilityInterval(hours.Low, 0.9).Low, 1e-4);
            Assert.Equal(1 - share, fit.ReliabilityInterval(hours.High, 0.9).High, 1e-4);
            Assert.True(fit.ReliabilityInterval(fit.HoursAt(share), 0.9).Contains(1 - share));
        }
    }

    private static FitJudgement Judge(IReadOnlyCollection<Life> lives, LifeLaw law) =>
        FitJudgement.Of(Assert.IsType<LifeFitOutcome.Fitted>(LifeFit.To(lives, law)).Fit, lives);
}
