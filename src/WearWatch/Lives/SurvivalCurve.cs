using MathNet.Numerics.Distributions;

namespace WearWatch.Lives;

/// <summary>What share of chains lasts longer than so many running hours, straight from the lives, with no law assumed.</summary>
/// <remarks>
/// <para><c>S(t) = product over t_i &lt;= t of (1 - d_i/n_i)</c>: d_i chains of n_i at risk fail at t_i. A suspension at the
/// same hours as a failure counts as at risk. Source: E. L. Kaplan, P. Meier, J. Am. Stat. Assoc. 53 (1958) 457 (from
/// memory).</para>
/// <para>Standard error: <c>S sqrt(sum of d_i/(n_i (n_i - d_i)))</c>, M. Greenwood 1926 (from memory). Cumulative hazard:
/// <c>sum of d_i/n_i</c>, W. Nelson, Technometrics 14 (1972) 945 (from memory).</para>
/// </remarks>
public sealed class SurvivalCurve
{
    private SurvivalCurve(IReadOnlyList<SurvivalStep> steps) => Steps = steps;

    /// <summary>One step for each moment at which a life ended, failures and suspensions, in order of hours.</summary>
    public IReadOnlyList<SurvivalStep> Steps { get; }

    /// <summary>How many lives it is made of.</summary>
    public int Lives => Steps.Count > 0 ? Steps[0].AtRisk : 0;

    /// <summary>How many of them were failures.</summary>
    public int Failures => Steps.Sum(s => s.Failed);

    /// <summary>The hours by which half of the chains have failed; null when fewer than half have.</summary>
    /// <remarks>Where the curve runs level at exactly one half, the middle of that stretch.</remarks>
    public double? MedianHours
    {
        get
        {
            const double tolerance = 1e-12; // products of (1 - d/n) miss one half by a few units in the last place
            var failures = Steps.Where(s => s.Failed > 0).ToList();
            var at = failures.FindIndex(s => s.Surviving <= 0.5 + tolerance);
            if (at < 0) return null;
            var level = failures[at].Surviving >= 0.5 - tolerance;
            return level && at + 1 < failures.Count ? (failures[at].Hours + failures[at + 1].Hours) / 2 : failures[at].Hours;
        }
    }

    /// <summary>Estimates the curve; lives may come in any order, and none gives a curve without steps.</summary>
    public static SurvivalCurve Of(IReadOnlyCollection<Life> lives)
    {
        var steps = new List<SurvivalStep>();
        var (atRisk, surviving, greenwood, hazard) = (lives.Count, 1.0, 0.0, 0.0);
        foreach (var moment in lives.GroupBy(l => l.Hours).OrderBy(g => g.Key))
        {
            var (ended, failed) = (moment.Count(), moment.Count(l => l.Failed));
            surviving *= 1 - (double)failed / atRisk;
            hazard += (double)failed / atRisk;
            greenwood += failed == 0 ? 0 : (double)failed / atRisk / (atRisk - failed);
            steps.Add(new SurvivalStep
            {
                Hours = moment.Key,
                AtRisk = atRisk,
                Failed = failed,
                Suspended = ended - failed,
                Surviving = surviving,
                StandardError = surviving * Math.Sqrt(greenwood),
                CumulativeHazard = hazard,
            });
            atRisk -= ended;
        }

        return new SurvivalCurve(steps);
    }

    /// <summary>The share that lasts longer than so many hours; the curve's last value beyond its end.</summary>
    public double SurvivingAt(double hours)
    {
        var share = 1.0;
        foreach (var step in Steps.TakeWhile(s => s.Hours <= hours)) share = step.Surviving;
        return share;
    }

    /// <summary>
    /// Pointwise confidence band, one interval for each of <see cref="Steps"/>; not a number where no chain is left.
    /// </summary>
    /// <param name="kind">The scale on which it is made.</param>
    /// <param name="level">Confidence, such as 0.95.</param>
    public IReadOnlyList<ConfidenceInterval> Band(BandKind kind, double level)
    {
        var z = Normal.InvCDF(0, 1, (1 + level) / 2);
        return [.. Steps.Select(s => BandAt(s, kind, z))];
    }

    /// <summary>Mean life up to the last hours seen: the area under the curve, with its standard error.</summary>
    /// <remarks>
    /// The true mean lies beyond while chains still run at the end. Both are those of a mean restricted to the time seen.
    /// </remarks>
    public (double Hours, double StandardErrorHours) RestrictedMean()
    {
        var (area, variance) = (0.0, 0.0);
        for (var i = Steps.Count - 1; i >= 0; i--)
        {
            var step = Steps[i];
            if (step.Failed > 0 && step.AtRisk > step.Failed)
                variance += area * area * step.Failed / step.AtRisk / (step.AtRisk - step.Failed);
            var (since, level) = i > 0 ? (Steps[i - 1].Hours, Steps[i - 1].Surviving) : (0.0, 1.0);
            area += (step.Hours - since) * level;
        }

        return (area, Math.Sqrt(variance));
    }

    private static ConfidenceInterval BandAt(SurvivalStep step, BandKind kind, double z)
    {
        var (share, error) = (step.Surviving, step.StandardError);
        if (double.IsNaN(error)) return new(double.NaN, double.NaN);
        if (error == 0) return new(share, share);
        switch (kind)
        {
            case BandKind.Plain:
                return new(Math.Max(share - z * error, 0), Math.Min(share + z * error, 1));
            case BandKind.Log:
                var factor = Math.Exp(z * error / share);
                return new(share / factor, Math.Min(share * factor, 1));
            default:
                var power = Math.Exp(z * error / (share * Math.Abs(Math.Log(share))));
                return new(Math.Pow(share, power), Math.Pow(share, 1 / power));
        }
    }
}
