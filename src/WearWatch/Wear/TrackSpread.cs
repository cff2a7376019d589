namespace WearWatch.Wear;

/// <summary>The elongation by a track as weighed points, from which quantiles are told.</summary>
/// <remarks>
/// Quantiles and not moments: where a track comes near to wear-through its upper tail is so long that mean and standard
/// deviation say
/// nothing of it.
/// </remarks>
internal sealed class TrackSpread
{
    /// <summary>Five points of a normal distribution with equal weights: its quantiles at 10, 30, 50, 70, 90 %.</summary>
    private static readonly double[] Points = [-1.2816, -0.5244, 0, 0.5244, 1.2816];

    private readonly List<(double Percent, double Weight)> points = [];

    private TrackSpread()
    {
    }

    /// <summary>
    /// Half of the way from the 16 to the 84 % quantile: the standard deviation of what is not too askew. In percent.
    /// </summary>
    public double HalfWidth => (Quantile(0.84) - Quantile(0.16)) / 2;

    /// <summary>The spread at so many running hours of the track.</summary>
    public static TrackSpread At(WearFilter filter, WearTrack track, double hours)
    {
        var spread = new TrackSpread();
        foreach (var (clockWeight, clock, accounts) in filter.Weigh(track))
        {
            foreach (var account in accounts)
            {
                var belief = account.BeliefAt(hours, filter.Constants);
                var weight = clockWeight * Math.Exp(account.LogWeight) / Points.Length;
                spread.points.AddRange(
                    Points.Select(z => (clock.ToElongation(belief.Wear + z * Math.Sqrt(belief.WearVariance)), weight)));
            }
        }

        spread.points.Sort();
        return spread;
    }

    /// <summary>The elongation below which a share of it lies, in percent; between points, from middle to middle.</summary>
    public double Quantile(double share)
    {
        var wanted = share * points.Sum(s => s.Weight);
        double below = 0, lastMiddle = double.NegativeInfinity, lastPercent = points[0].Percent;
        foreach (var (percent, weight) in points)
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
