using System.Numerics;

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
        var backwards = Backwards(before);
        var sums = new double[pairs.Length];
        for (var j = 0; j < behind.Length; j++)
        {
            if (double.IsNaN(behind[j]) || double.IsNaN(places[j])) continue;
            var number = (int)Math.Round(places[j] - fraction);
            // Of this roller the sums need the numbers from reach above to reach below; backwards they lie in the sums' order.
            if (number + reach < 0 || number - reach >= before.Length) continue;
            AddProducts(backwards.AsSpan(before.Length - 1 - number + reach, sums.Length), behind[j], sums);
        }

        bursts.Add(sums);
    }

    /// <summary>A series from its end, with nothing known on either side as far as a roller can reach.</summary>
    private double[] Backwards(LinkSeries series)
    {
        var backwards = new double[series.Length + 4 * reach];
        Array.Fill(backwards, double.NaN);
        for (var i = 0; i < series.Length; i++) backwards[2 * reach + series.Length - 1 - i] = series[i];
        return backwards;
    }

    private void AddProducts(ReadOnlySpan<double> values, double times, double[] sums)
    {
        var k = 0;
        for (var lanes = Vector<double>.Count; k <= values.Length - lanes; k += lanes)
        {
            var x = new Vector<double>(values[k..]);
            var known = Vector.Equals(x, x);
            (new Vector<double>(sums, k) + Vector.ConditionalSelect(known, x * new Vector<double>(times), Vector<double>.Zero))
                .CopyTo(sums, k);
            (new Vector<double>(pairs, k) + Vector.ConditionalSelect(known, Vector<double>.One, Vector<double>.Zero))
                .CopyTo(pairs, k);
        }

        for (; k < values.Length; k++)
        {
            if (double.IsNaN(values[k])) continue;
            sums[k] += values[k] * times;
            pairs[k]++;
        }
    }
}
