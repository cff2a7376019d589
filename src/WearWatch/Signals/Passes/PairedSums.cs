namespace WearWatch.Signals.Passes;

/// <summary>Products of a chain's two series of links, summed by how many passes lie between them.</summary>
/// <param name="reach">From so many passes before to so many behind.</param>
internal sealed class PairedSums(int reach)
{
    private readonly List<double[]> bursts = [];
    private readonly double[] pairs = new double[2 * reach + 1];

    /// <summary>Each burst's sums; the middle one is of no passes between them.</summary>
    public IReadOnlyList<double[]> Bursts => bursts;

    /// <summary>How many products there are in all.</summary>
    public IReadOnlyList<double> Pairs => pairs;

    /// <summary>
    /// By how many standard deviations one count lies above another, by the scatter of their difference between bursts.
    /// </summary>
    public double Lead(int over, int other)
    {
        var (best, behind) = (over + reach, other + reach);
        if (bursts.Count < 2 || Math.Max(Math.Abs(over), Math.Abs(other)) > reach) return 0;
        if (pairs[best] == 0 || pairs[behind] == 0) return 0;
        var scale = Math.Sqrt(pairs[best] / pairs[behind]);
        var (sum, squares) = (0.0, 0.0);
        foreach (var burst in bursts)
        {
            var difference = burst[best] - scale * burst[behind];
            sum += difference;
            squares += difference * difference;
        }

        var n = bursts.Count;
        var variance = (squares - sum * sum / n) / (n - 1);
        return sum / Math.Sqrt(n * Math.Max(variance, double.Epsilon));
    }

    /// <summary>Adds a burst.</summary>
    /// <param name="before">The series at the first sensor, by its numbers.</param>
    /// <param name="behind">The series at the second sensor, by its numbers.</param>
    /// <param name="places">Where the chain stood at the first sensor when each roller was at the second, in its numbers.</param>
    /// <param name="fraction">The day's part of a pitch.</param>
    public void Add(LinkSeries before, LinkSeries behind, double[] places, double fraction)
    {
        var sums = new double[pairs.Length];
        for (var j = 0; j < behind.Length; j++)
        {
            if (double.IsNaN(behind[j]) || double.IsNaN(places[j])) continue;
            var number = (int)Math.Round(places[j] - fraction);
            for (var k = 0; k < sums.Length; k++)
            {
                if (before[number - (k - reach)] is var x && double.IsNaN(x)) continue;
                sums[k] += x * behind[j];
                pairs[k]++;
            }
        }

        bursts.Add(sums);
    }
}
