using MathNet.Numerics.Distributions;

namespace WearWatch.Lives;

/// <summary>How likely a swapped chain would have broken, had it been left on until the next chance to swap it.</summary>
/// <remarks>
/// The law of failure is the one by which swaps are planned: none before the limit, beyond it the hours to failure are
/// exponential. The rate of wear is lognormal about what the chain's readings showed; the probability is its mean over 99
/// quantiles. An assumption, as the mean hours are.
/// </remarks>
public static class SparedBreakdown
{
    private const int Quantiles = 99;

    /// <summary>Of a chain that had passed its limit already, and had not broken.</summary>
    /// <param name="hoursAhead">Running hours until the next chance.</param>
    /// <param name="meanHoursPastLimit">Mean hours from the limit to failure.</param>
    public static double PastLimit(double hoursAhead, double meanHoursPastLimit) =>
        1 - Math.Exp(-hoursAhead / meanHoursPastLimit);

    /// <summary>Of a chain before its limit.</summary>
    /// <param name="percentLeft">Elongation left to the limit, in percent; above zero.</param>
    /// <param name="logRate">ln of its wear rate in percent per 1,000 h, with its standard error.</param>
    /// <param name="hoursAhead">Running hours until the next chance.</param>
    /// <param name="meanHoursPastLimit">Mean hours from the limit to failure.</param>
    public static double BeforeLimit(
        double percentLeft, (double Mean, double StandardError) logRate, double hoursAhead, double meanHoursPastLimit) =>
        Enumerable.Range(1, Quantiles).Average(q =>
        {
            var rate = Math.Exp(logRate.Mean + logRate.StandardError * Normal.InvCDF(0, 1, q / (Quantiles + 1.0)));
            return PastLimit(Math.Max(0, hoursAhead - 1000 * percentLeft / rate), meanHoursPastLimit);
        });
}
