using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>What is believed of a chain's wear before its first reading.</summary>
/// <remarks>
/// The wear rate is in percent per 1,000 running hours, and lognormal: its natural logarithm has the mean and variance given.
/// </remarks>
/// <param name="MeanLogRate">Mean of ln(wear rate).</param>
/// <param name="VarianceLogRate">Variance of ln(wear rate); above zero.</param>
/// <param name="MeanStartPercent">
/// Mean of where the straight part of the track starts at zero hours: new length and run-in.
/// </param>
/// <param name="StandardDeviationStartPercent">Standard deviation of the start, in percent; above zero.</param>
/// <param name="Source">What gave it, in words for the screen: the broad prior, or the fleet model with its version.</param>
public sealed record WearPrior(
    double MeanLogRate, double VarianceLogRate, double MeanStartPercent, double StandardDeviationStartPercent, Phrase Source)
{
    /// <summary>What serves until a fleet can be learned from: a median of 0.2 % per 1,000 h, within a factor of e.</summary>
    public static WearPrior Broad { get; } = new(Math.Log(0.2), 1.0, 0.25, 0.12, $"broad prior");
}
