namespace WearWatch.Signals.Passes;

/// <summary>
/// What the sensors tell in one burst, by the second one's numbers: values of the link that passes it, NaN where unknown.
/// </summary>
/// <param name="Phase">
/// Where the chain stands at the first sensor against the number of the roller at the second: the sum of all links between them.
/// No speed is in it.
/// </param>
/// <param name="Steps">The phase without what changes over many links: it tells one pass from the next.</param>
/// <param name="Excess">By how much more than one link passed the first sensor while this link passed the second.</param>
/// <param name="First">The interval at the first sensor of the link that is there when this link is at the second.</param>
internal sealed record LoopSeries(double[] Phase, double[] Steps, double[] Excess, double[] First)
{
    /// <summary>Fewer passes tell nothing of a loop.</summary>
    private const int FewestPasses = 40;

    /// <summary>Half the width of what changes over many links.</summary>
    private const int Local = 6;

    /// <summary>The series of a burst; null where it is too short.</summary>
    /// <param name="first">Passes at the first sensor.</param>
    /// <param name="second">Passes at the second sensor.</param>
    /// <param name="fraction">The day's part of a pitch.</param>
    /// <param name="teeth">Teeth of the sprocket; null when nobody told.</param>
    /// <param name="half">Half the width of the local parabola that takes the speed away, in links.</param>
    public static LoopSeries? Of(PassTrain first, PassTrain second, double fraction, int? teeth, int half)
    {
        var (excess, places) = SpeedFree.Excess(first, second);
        if (places.Count(double.IsFinite) < FewestPasses) return null;
        var intervals = LinkSeries.Of(SpeedFree.Intervals(first), teeth, half);
        var phase = WithoutSlope(places);
        return new LoopSeries(
            Cleaned(LinkSeries.Of(phase, null, 0), places),
            Cleaned(LinkSeries.Of(phase, null, Local), places),
            Cleaned(LinkSeries.Of(excess, teeth, 0), excess),
            Array.ConvertAll(places, p => double.IsNaN(p) ? double.NaN : intervals[(int)Math.Round(p - fraction)]));
    }

    /// <summary>The places less the numbers, and less what one clock gains on the other.</summary>
    private static double[] WithoutSlope(double[] places)
    {
        int[] known = [.. Enumerable.Range(0, places.Length).Where(j => double.IsFinite(places[j]))];
        var (middle, mean) = (known.Average(), known.Average(j => places[j] - j));
        var slope = known.Sum(j => (j - middle) * (places[j] - j - mean)) / known.Sum(j => (j - middle) * (j - middle));
        return [.. places.Select((p, j) => p - j - mean - slope * (j - middle))];
    }

    private static double[] Cleaned(LinkSeries series, double[] raw) =>
        [.. raw.Select((v, j) => double.IsNaN(v) ? double.NaN : series[j])];
}
