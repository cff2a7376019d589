namespace WearWatch.Lubrication.Intervals;

/// <summary>What oiling and wear cost, in the plant's money. No default: nobody but the plant knows them.</summary>
/// <param name="OfOiling">One oiling of one chain: work and oil; above zero.</param>
/// <param name="OfChain">Wearing out one chain: the new chain and its fitting; above zero.</param>
/// <param name="LimitPercent">The elongation at which such a chain is replaced.</param>
public sealed record OilingCosts(double OfOiling, double OfChain, double LimitPercent)
{
    /// <summary>Cost of 1,000 running hours of one chain: wear and oil.</summary>
    /// <param name="intervalHours">Running hours between two oilings.</param>
    /// <param name="ratePercentPer1000Hours">Wear rate at that interval.</param>
    public double Per1000Hours(double intervalHours, double ratePercentPer1000Hours) =>
        OfChain * ratePercentPer1000Hours / LimitPercent + OfOiling * 1000 / intervalHours;
}
