using WearWatch.Wear;

namespace WearWatch.Entries;

/// <summary>Carries a chain's track ahead to a moment and takes the middle and the width of what it then expects.</summary>
/// <remarks>
/// Of quantiles, not of moments: where a chain may have begun to wear through, the upper tail is so long that mean and standard
/// deviation say nothing of an ordinary reading.
/// </remarks>
internal static class TrackAhead
{
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
        var before = TrackSpread.At(filter, track, track.Hours);
        var now = TrackSpread.At(filter, track, track.Hours + ahead);
        var growth = Math.Max(0, now.Quantile(0.5) - before.Quantile(0.5));
        var deviation = Coarseness * (now.Quantile(0.84) - now.Quantile(0.16)) / 2;
        return new Expectation(now.Quantile(0.5) - chain.RunInLeftPercent(hours, filter.Constants),
            Math.Max(deviation, LeastShareOfGrowth * growth), growth);
    }
}
