using WearWatch.Trends;

namespace WearWatch.Signals.Passes;

/// <summary>The links of the whole chain, each seen again with every loop of the day and averaged.</summary>
/// <remarks>
/// One pass says little of a link: jitter is as much as links differ. But each link comes again with every loop, and the phase,
/// a sum of many links, tells at once where in its loop the chain stands when a burst begins. So the bursts of a day are laid on
/// one loop, and each link is the mean of some hundred passes. The count is then read as in <see cref="JointPattern"/>: the
/// excess, which no speed is in, goes along with the intervals at the first sensor at the true count alone.
/// </remarks>
internal sealed class ChainLoop
{
    private const int Rounds = 4;

    /// <summary>While one link passes the second sensor, these before and behind pass the first one.</summary>
    private const int AtOnce = 2;

    /// <summary>Its least height, in robust deviations of all counts that cannot be: of links alike by chance.</summary>
    private const double Clear = 4;

    /// <summary>By how many of them it leads each other count that can be.</summary>
    private const double Lead = 2.5;

    /// <summary>The same where the bursts, each by itself, are for that count too.</summary>
    private const double ClearWithBursts = 3;
    private const double LeadWithBursts = 1.5;

    private readonly SensorPair pair;
    private readonly double[] excess;
    private readonly double[] first;
    private readonly int half;
    private readonly double[] heights;
    private readonly double deviation;

    private ChainLoop(SensorPair pair, double[] excess, double[] first, int half)
    {
        (this.pair, this.excess, this.first, this.half) = (pair, excess, first, half);
        heights = Heights();
        deviation = Median.DeviationAbout(0, Array.FindAll(heights, double.IsFinite));
    }

    /// <summary>Lays the bursts of a day on one loop; null where they do not show one.</summary>
    public static ChainLoop? Of(
        SensorPair pair, IReadOnlyList<(PassTrain First, PassTrain Second)> trains, double fraction, int half)
    {
        var bursts = trains.Select(t => LoopSeries.Of(t.First, t.Second, fraction, pair.DriverTeeth, half))
            .OfType<LoopSeries>().ToList();
        if (bursts.Count < PassDay.FewestBursts || LoopPeriod.Of(bursts, pair.NominalPitches / 2) is not { } length) return null;
        var begins = Begins(bursts, length);
        return new ChainLoop(pair, Mean(b => b.Excess), Mean(b => b.First), half);

        double[] Mean(Func<LoopSeries, double[]> of)
        {
            var mean = new LoopMean(length);
            for (var i = 0; i < bursts.Count; i++) mean.Add(of(bursts[i]), begins[i], 1);
            return mean.Values;
        }
    }

    /// <summary>What the loop tells; null when it does not tell.</summary>
    /// <param name="highest">What is highest within the bursts: where that is the same, less is proof enough.</param>
    public PatternCount? Count(PatternCount? highest)
    {
        if (Candidates().OrderByDescending(c => heights[c.Lag]).ToList() is not [var best, .. var rest]) return null;
        var (clear, lead) = best.Count == highest ? (ClearWithBursts, LeadWithBursts) : (Clear, Lead);
        // Of a wrong kind it is enough to know the kind.
        return heights[best.Lag] >= clear * deviation && rest.All(other =>
            (other.Lag != best.Lag && other.Count.Kind == best.Count.Kind && best.Count.Kind != PatternKind.EachRoller)
            || heights[best.Lag] - heights[other.Lag] >= lead * deviation) ? best.Count : null;
    }

    /// <summary>Whether the loop is for one count rather than for another.</summary>
    /// <param name="count">Passes between a link's passing the sensors; below none where it passes the second one first.</param>
    /// <param name="other">Those of the other.</param>
    /// <param name="lead">By how many robust deviations it has to be.</param>
    public bool Prefers(int count, int other, double lead) =>
        heights[Lag(count)] - heights[Lag(other)] >= lead * deviation;

    private int Lag(int count) => (count % heights.Length + heights.Length) % heights.Length;

    /// <summary>
    /// How far the excess goes along with the intervals so many passes before, those of the links at the first sensor at that
    /// time taken out of both (partial correlation), by Fisher's transform of it; NaN where both hold one jitter.
    /// </summary>
    private double[] Heights()
    {
        List<double[]> there = [];
        for (var lag = -AtOnce; lag <= AtOnce; lag++) there.Add(Without(there, Before(lag)));
        var rest = Without(there, excess);
        var heights = new double[excess.Length];
        for (var lag = 0; lag < heights.Length; lag++)
        {
            heights[lag] = double.NaN;
            if (Math.Min(lag, heights.Length - lag) <= 2 * half + 1) continue;
            var before = Without(there, Before(lag));
            heights[lag] = Math.Atanh(Dot(rest, before) / Math.Sqrt(Dot(rest, rest) * Dot(before, before)));
        }

        return heights;
    }

    /// <summary>What each link has in common with the one so many passes before it.</summary>
    private double[] Before(int lag)
    {
        var turned = (lag % first.Length + first.Length) % first.Length;
        return [.. first.AsSpan(first.Length - turned), .. first.AsSpan(0, first.Length - turned)];
    }

    private static double[] Without(List<double[]> columns, double[] values)
    {
        var rest = (double[])values.Clone();
        foreach (var column in columns)
        {
            var share = Dot(rest, column) / Dot(column, column);
            for (var i = 0; i < rest.Length; i++) rest[i] -= share * column[i];
        }

        return rest;
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }

    /// <summary>The counts that can be, each at its place in the loop: both sensors are on one straight run of it.</summary>
    private IEnumerable<(int Lag, PatternCount Count)> Candidates()
    {
        for (var count = -heights.Length / 2 - 1; count <= heights.Length / 2; count++)
        {
            var lag = Lag(count);
            if (double.IsFinite(heights[lag]) && PatternCount.KindOf(pair, count) is { } kind)
                yield return (lag, new(kind, count));
        }
    }

    /// <summary>Where in the loop each burst begins, by the phase: again and again against the mean of the others.</summary>
    private static int[] Begins(List<LoopSeries> bursts, int length)
    {
        var begins = new int[bursts.Count];
        var mean = new LoopMean(length);
        for (var round = 0; round < Rounds; round++)
        {
            for (var i = 0; i < begins.Length; i++)
            {
                if (round > 0) mean.Add(bursts[i].Phase, begins[i], -1);
                begins[i] = mean.Nearest(bursts[i].Phase);
                mean.Add(bursts[i].Phase, begins[i], 1);
            }
        }

        return begins;
    }
}
