using WearWatch.Wear;

namespace WearWatch.Entries;

/// <summary>Carries a chain's track ahead to a moment and takes the middle and the width of what it then expects.</summary>
/// <remarks>
/// Of quantiles, not of moments: where a chain may have begun to wear through, the upper tail is so long that mean and standard
/// deviation say nothing of an ordinary reading.
/// </remarks>
internal static class TrackAhead
{
    /// <summary>Five points of a normal distribution with equal weights: its quantiles at 10, 30, 50, 70, 90 %.</summary>
    private static readonly double[] Points = [-1.2816, -0.5244, 0, 0.5244, 1.2816];

    /// <summary>
    /// Half the width from the 16 % to the 84 % quantile is a standard deviation; that of five points falls short by this.
    /// </summary>
    private const double Coarseness = 1.1;

    /// <summary>
    /// Nobody foretells wear better than this, even where the track ends at the largest elongation that it knows.
    /// </summary>
    private const double LeastShareOfGrowth = 0.05;

    /// <summary>What a chain is expected to show.</summary>
    /// <param name="chain">The chain with its earlier observations.</param>
    /// <param name="prior">What is believed of it before its first reading.</param>
    /// <param name="hours">Running hours since fitting at the moment.</param>
    public static Expectation Of(FittedChain chain, WearPrior prior, double hours)
    {
        var filter = WearFilter.Default;
        var earlier = chain with { Observations = [.. chain.Observations.Where(o => o.HoursSinceFitting <= hours)] };
        var track = filter.Follow(earlier, prior);
        // Where the fitting is not known the track counts its hours from elsewhere; the way ahead is the same.
        var ahead = earlier.Observations is [.., var last] ? hours - last.HoursSinceFitting : hours;
        var before = Spread(filter, track, track.Hours);
        var now = Spread(filter, track, track.Hours + ahead);
        var growth = Math.Max(0, Quantile(now, 0.5) - Quantile(before, 0.5));
        var deviation = Coarseness * (Quantile(now, 0.84) - Quantile(now, 0.16)) / 2;
        return new Expectation(Quantile(now, 0.5) - chain.RunInLeftPercent(hours, filter.Constants),
            Math.Max(deviation, LeastShareOfGrowth * growth), growth);
    }

    private static List<(double Percent, double Weight)> Spread(WearFilter filter, WearTrack track, double hours)
    {
        var spread = new List<(double Percent, double Weight)>();
        foreach (var (clockWeight, clock, accounts) in filter.Weigh(track))
        {
            foreach (var account in accounts)
            {
                var belief = account.BeliefAt(hours, filter.Constants);
                var weight = clockWeight * Math.Exp(account.LogWeight) / Points.Length;
                spread.AddRange(
                    Points.Select(z => (clock.ToElongation(belief.Wear + z * Math.Sqrt(belief.WearVariance)), weight)));
            }
        }

        spread.Sort();
        return spread;
    }

    /// <summary>Between points, from middle to middle of their weights.</summary>
    private static double Quantile(List<(double Percent, double Weight)> spread, double share)
    {
        var wanted = share * spread.Sum(s => s.Weight);
        double below = 0, lastMiddle = double.NegativeInfinity, lastPercent = spread[0].Percent;
        foreach (var (percent, weight) in spread)
        {
            var middle = below + weight / 2;
            if (middle >= wanted)
            {
                return double.IsNegativeInfinity(lastMiddle)
                    ? percent
                    : lastPercent + (percent - lastPercent) * (wanted - lastMiddle) / (middle - lastMiddle);
            }

            (below, lastMiddle, lastPercent) = (below + weight, middle, percent);
        }

        return lastPercent;
    }
}
