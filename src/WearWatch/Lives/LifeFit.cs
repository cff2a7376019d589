using MathNet.Numerics.Distributions;
using MathNet.Numerics.RootFinding;

namespace WearWatch.Lives;

/// <summary>
/// A law fitted to lives by maximum likelihood, with suspensions counted as what they are: chains that lasted longer.
/// </summary>
/// <remarks>
/// <c>ln L = sum over failures of ln f(t) + sum over suspensions of ln S(t)</c>. Intervals are by likelihood ratio: all values
/// for which the best fit through them is at most <c>chi-square(1, level)/2</c> worse in ln L. They need no symmetry and hold up
/// in small groups, where estimate plus or minus standard error does not. Source: docs/references.md [15], chapter 8 (from
/// memory).
/// </remarks>
public sealed class LifeFit
{
    /// <summary>Fewer failures than this and the fit is refused.</summary>
    public const int FewestFailures = 2;

    private readonly LifeLikelihood likelihood;
    private readonly double a;
    private readonly double b;

    private LifeFit(LifeLaw law, LifeLikelihood likelihood, int failures, int suspensions)
    {
        (Law, this.likelihood, Failures, Suspensions) = (law, likelihood, failures, suspensions);
        (a, b, LogLikelihood) = likelihood.Maximum();
    }

    /// <summary>The law.</summary>
    public LifeLaw Law { get; }

    /// <summary>How many of the lives were failures.</summary>
    public int Failures { get; }

    /// <summary>How many were suspensions.</summary>
    public int Suspensions { get; }

    /// <summary>The greatest ln L; of two laws on the same lives the greater fits better.</summary>
    public double LogLikelihood { get; }

    /// <summary>Steepness of the line on the law's paper; for Weibull the shape: 1 chance, above it wear-out.</summary>
    public double Steepness => a;

    /// <summary>Hours at height zero of the paper: for Weibull the scale (63.2 % failed), for lognormal the median.</summary>
    public double ScaleHours => Math.Exp(likelihood.Centre - b / a);

    /// <summary>The hours by which one in ten has failed.</summary>
    public double B10Hours => HoursAt(0.10);

    /// <summary>The hours by which half have failed.</summary>
    public double MedianHours => HoursAt(0.50);

    /// <summary>Standard error of <see cref="Steepness"/> by the curvature of ln L.</summary>
    public double SteepnessStandardError => Math.Sqrt(Covariance().Aa);

    /// <summary>Standard error of <see cref="ScaleHours"/> by the curvature of ln L.</summary>
    public double ScaleStandardErrorHours => ScaleHours * LogHoursStandardError(0);

    /// <summary>Fits a law to lives.</summary>
    public static LifeFitOutcome To(IReadOnlyCollection<Life> lives, LifeLaw law)
    {
        var failures = lives.Count(l => l.Failed);
        if (failures < FewestFailures) return new LifeFitOutcome.TooFewFailures(failures, FewestFailures);
        var first = lives.Where(l => l.Failed).Min(l => l.Hours);
        return lives.All(l => l.Failed ? l.Hours == first : l.Hours <= first)
            ? new LifeFitOutcome.NoSpread(first)
            : new LifeFitOutcome.Fitted(new LifeFit(law, new LifeLikelihood(law, lives), failures, lives.Count - failures));
    }

    /// <summary>The hours by which a share, 0 to 1 exclusive, has failed.</summary>
    public double HoursAt(double shareFailed) => Math.Exp(LogHoursAt(Law.Height(shareFailed)));

    /// <summary>Standard error of ln of the hours by which a share has failed, by the curvature of ln L.</summary>
    public double LogHoursErrorAt(double shareFailed) => LogHoursStandardError(Law.Height(shareFailed));

    /// <summary>The share that has failed by so many hours.</summary>
    public double ShareFailedAt(double hours) => Law.ShareFailed(a * (Math.Log(hours) - likelihood.Centre) + b);

    /// <summary>Interval by likelihood ratio for <see cref="Steepness"/>.</summary>
    /// <param name="level">Confidence, such as 0.95.</param>
    public ConfidenceInterval SteepnessInterval(double level)
    {
        var error = SteepnessStandardError / a;
        return Exp(Ends(Math.Log(a), error, level, logA => likelihood.MaximumAtSteepness(Math.Exp(logA))));
    }

    /// <summary>Interval by likelihood ratio for <see cref="HoursAt"/>.</summary>
    /// <param name="shareFailed">The share, 0 to 1 exclusive.</param>
    /// <param name="level">Confidence, such as 0.95.</param>
    public ConfidenceInterval HoursInterval(double shareFailed, double level)
    {
        var height = Law.Height(shareFailed);
        return Exp(Ends(LogHoursAt(height), LogHoursStandardError(height), level,
            logHours => likelihood.MaximumThrough(logHours, height, a)));
    }

    /// <summary>Interval by likelihood ratio for the share that lasts longer than so many hours.</summary>
    /// <param name="hours">The hours; above zero.</param>
    /// <param name="level">Confidence, such as 0.95.</param>
    public ConfidenceInterval ReliabilityInterval(double hours, double level)
    {
        var x = Math.Log(hours) - likelihood.Centre;
        var (aa, ab, bb) = Covariance();
        var heights = Ends(a * x + b, Math.Sqrt(x * x * aa + 2 * x * ab + bb), level,
            height => likelihood.MaximumThrough(Math.Log(hours), height, a));
        return new(1 - Law.ShareFailed(heights.High), 1 - Law.ShareFailed(heights.Low));
    }

    /// <summary>Interval by likelihood ratio for <see cref="ScaleHours"/>.</summary>
    /// <param name="level">Confidence, such as 0.95.</param>
    public ConfidenceInterval ScaleInterval(double level) => HoursInterval(Law.ShareFailed(0), level);

    private double LogHoursAt(double height) => likelihood.Centre + (height - b) / a;

    // ln t = centre + (z - b)/a, so its gradient in (a, b) is (-(z - b)/a^2, -1/a).
    private double LogHoursStandardError(double height)
    {
        var (aa, ab, bb) = Covariance();
        var (ga, gb) = (-(height - b) / (a * a), -1 / a);
        return Math.Sqrt(ga * ga * aa + 2 * ga * gb * ab + gb * gb * bb);
    }

    private (double Aa, double Ab, double Bb) Covariance()
    {
        var (_, _, _, haa, hab, hbb) = likelihood.At(a, b);
        var det = haa * hbb - hab * hab;
        return (-hbb / det, hab / det, -haa / det);
    }

    private ConfidenceInterval Ends(double best, double error, double level, Func<double, double> profile)
    {
        var z = Normal.InvCDF(0, 1, (1 + level) / 2);
        double Excess(double x) => 2 * (LogLikelihood - profile(x)) - z * z;
        double End(int side)
        {
            var far = z * error;
            while (Excess(best + side * far) < 0) far *= 1.5;
            return Brent.FindRoot(x => Excess(best + side * x), 0, far, 1e-6 * error);
        }

        return new(best - End(-1), best + End(+1));
    }

    private static ConfidenceInterval Exp(ConfidenceInterval logs) => new(Math.Exp(logs.Low), Math.Exp(logs.High));
}
