using System.Numerics;

namespace WearWatch.Signals.Passes;

/// <summary>The mean of what is told of each link of a loop.</summary>
/// <param name="length">The loop in passes.</param>
internal sealed class LoopMean(int length)
{
    /// <summary>So many loops of a burst tell where it begins.</summary>
    private const int Loops = 2;

    private readonly double[] sums = new double[length];
    private readonly int[] counts = new int[length];

    /// <summary>The mean of each link; 0 where nothing is told.</summary>
    public double[] Values => [.. sums.Select((s, link) => counts[link] == 0 ? 0 : s / counts[link])];

    /// <summary>Adds a burst's values, or takes them back.</summary>
    /// <param name="values">By pass; NaN where unknown.</param>
    /// <param name="begin">The link of the first pass.</param>
    /// <param name="times">1, or -1 to take them back.</param>
    public void Add(double[] values, int begin, int times)
    {
        for (var j = 0; j < values.Length; j++)
        {
            if (double.IsNaN(values[j])) continue;
            sums[(begin + j) % length] += times * values[j];
            counts[(begin + j) % length] += times;
        }
    }

    /// <summary>The link with which values begin so that they are nearest to the mean, by least squares.</summary>
    public int Nearest(double[] values)
    {
        // Several beginnings at once, side by side in a vector; each of them adds up in the same order as alone.
        var lanes = Vector<double>.Count;
        var mean = Values;
        var round = new double[(Loops + 1) * length + lanes];
        for (var i = 0; i < round.Length; i++) round[i] = mean[i % length];
        var (best, least) = (0, double.PositiveInfinity);
        for (var begin = 0; begin < length; begin += lanes)
        {
            var off = Vector<double>.Zero;
            for (var j = 0; j < Math.Min(values.Length, Loops * length); j++)
            {
                if (double.IsNaN(values[j])) continue;
                // Against no mean at all, so that a link of which nothing is told favours no place: its mean is 0.
                var there = new Vector<double>(round, begin + j);
                off += there * (there - new Vector<double>(2 * values[j]));
            }

            for (var lane = 0; lane < lanes && begin + lane < length; lane++)
                if (off[lane] < least) (best, least) = (begin + lane, off[lane]);
        }

        return best;
    }
}
