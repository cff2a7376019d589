using WearWatch.Lives;

namespace WearWatch.Tests.Lives;

/// <summary>Fits against the printed results of examples.</summary>
public sealed class PublishedLifeFitTests
{
    // NIST/SEMATECH e-Handbook 8.4.1.3: 10 failures, 10 suspended at 500 h.
    [Fact]
    public void The_NIST_handbook_example_comes_out_as_printed()
    {
        var fit = Weibull("nist_8.4.1.3");
        Assert.Equal(1.7208, Math.Round(fit.Steepness, 4));
        Assert.Equal(606.528, Math.Round(fit.ScaleHours, 3), 3e-3); // printed 606.5280; R and we have 606.5276
        Assert.Equal(-75.135, Math.Round(fit.LogLikelihood, 3));
    }

    // R. B. Abernethy, The New Weibull Handbook, appendix C, p. 257.
    [Fact]
    public void The_Abernethy_example_comes_out_as_printed()
    {
        var fit = Weibull("abernethy_c5");
        Assert.Equal(2.257, Math.Round(fit.Steepness, 3));
        Assert.Equal(4900.1, Math.Round(fit.ScaleHours, 1));
    }

    // J. Quality Technology 29(1), 1997, doi 10.1080/00224065.1997.11979730: estimates with 95 % limits, estimate +- 1.96 errors.
    [Fact]
    public void The_JQT_example_and_its_normal_limits_come_out_as_printed()
    {
        var fit = Weibull("jqt_1997_29_1");
        Assert.Equal(2.754, Math.Round(fit.Steepness, 3));
        Assert.Equal(67.9188, Math.Round(fit.ScaleHours, 4));
        Assert.Equal(1.4977, fit.Steepness - 1.959964 * fit.SteepnessStandardError, 4e-4);
        Assert.Equal(4.0102, fit.Steepness + 1.959964 * fit.SteepnessStandardError, 4e-4);
        Assert.Equal(53.8755, fit.ScaleHours - 1.959964 * fit.ScaleStandardErrorHours, 1e-3);
        Assert.Equal(81.9622, fit.ScaleHours + 1.959964 * fit.ScaleStandardErrorHours, 1e-3);
    }

    // W. Q. Meeker, L. A. Escobar 1998, table C.2, chapter 8 (from memory): mu 10.23, sigma .3164, eta 27,719, beta 3.16.
    [Fact]
    public void The_shock_absorbers_come_out_as_printed()
    {
        var fit = Weibull("shock_absorber_all_modes");
        Assert.Equal(10.23, Math.Round(Math.Log(fit.ScaleHours), 2));
        Assert.Equal(0.3164, Math.Round(1 / fit.Steepness, 4));
        Assert.Equal(27719, Math.Round(fit.ScaleHours));
        Assert.Equal(3.16, Math.Round(fit.Steepness, 2));
    }

    private static double LogLikelihood(IEnumerable<Life> lives, double shape, double scale) => lives.Sum(l =>
        (l.Failed ? Math.Log(shape / scale) + (shape - 1) * Math.Log(l.Hours / scale) : 0) - Math.Pow(l.Hours / scale, shape));

    private static LifeFit Weibull(string id) => Fitted(PublishedLives.WeibullCase(id).Lives(), LifeLaw.Weibull);

    private static LifeFit Fitted(IReadOnlyCollection<Life> lives, LifeLaw law) =>
        Assert.IsType<LifeFitOutcome.Fitted>(LifeFit.To(lives, law)).Fit;
}
