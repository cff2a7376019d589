namespace WearWatch.Wear;

/// <summary>By how much the chains of a plant differ from what was believed of them before their first reading.</summary>
/// <remarks>
/// A prior from lines through readings is off where wear is no line, and the broad prior knows nothing of the plant. The readings
/// tell both. It holds for priors of the kind that it was found for: of a fleet model, or the broad one.
/// </remarks>
/// <param name="LogRate">Added to the mean of ln(wear rate).</param>
/// <param name="VarianceFactor">By what the variance of ln(wear rate) is multiplied; above zero.</param>
/// <param name="StartPercent">Added to where a new chain starts, in percent.</param>
/// <param name="OfBroad">Whether it was found for the broad prior.</param>
public sealed record PriorCorrection(double LogRate, double VarianceFactor, double StartPercent, bool OfBroad)
{
    /// <summary>No correction.</summary>
    public static PriorCorrection None { get; } = new(0, 1, 0, false);

    /// <summary>The belief about a chain at the hours for which its prior holds.</summary>
    /// <param name="prior">The prior.</param>
    /// <param name="atFitting">Whether that is its fitting; if not, only its rate is corrected.</param>
    public Belief Apply(WearPrior prior, bool atFitting)
    {
        var belief = Belief.AtFitting(prior);
        if (this == None || OfBroad != (prior.Source == WearPrior.Broad.Source)) return belief;
        return belief with
        {
            LogRate = belief.LogRate + LogRate,
            LogRateVariance = belief.LogRateVariance * VarianceFactor,
            Wear = belief.Wear + (atFitting ? StartPercent : 0),
        };
    }
}
