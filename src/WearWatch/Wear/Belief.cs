namespace WearWatch.Wear;

/// <summary>A normal belief about one chain: how far it is worn and how fast it wears, with how sure that is.</summary>
/// <param name="Wear">l: steady elongation in percent, run-in left out (in percent of the wear clock where one runs).</param>
/// <param name="LogRate">rho: ln(wear rate), the rate in percent per 1,000 h.</param>
/// <param name="WearVariance">P_ll: variance of l, percent squared.</param>
/// <param name="Covariance">P_lr: covariance of l and rho.</param>
/// <param name="LogRateVariance">P_rr: variance of rho.</param>
public readonly record struct Belief(double Wear, double LogRate, double WearVariance, double Covariance, double LogRateVariance)
{
    /// <summary>The belief about a chain at its fitting.</summary>
    public static Belief AtFitting(WearPrior prior) => new(
        prior.MeanStartPercent, prior.MeanLogRate,
        prior.StandardDeviationStartPercent * prior.StandardDeviationStartPercent, 0, prior.VarianceLogRate);

    /// <summary>The belief once the rate has jumped by a lognormal factor.</summary>
    /// <param name="mean">Mean of ln(factor).</param>
    /// <param name="deviation">Standard deviation of ln(factor).</param>
    public Belief AfterJump(double mean, double deviation) =>
        this with { LogRate = LogRate + mean, LogRateVariance = LogRateVariance + deviation * deviation };
}
