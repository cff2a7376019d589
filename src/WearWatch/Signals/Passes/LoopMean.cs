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
        var mean = Values;
        var (best, least) = (0, double.PositiveInfinity);
        for (var begin = 0; begin < length; begin++)
        {
            var off = 0.0;
            var link = begin - 1;
            for (var j = 0; j < Math.Min(values.Length, Loops * length); j++)
            {
                link = link + 1 == length ? 0 : link + 1;
                if (double.IsNaN(values[j]) || counts[link] == 0) continue;
                // Against no mean at all, so that a link of which nothing is told favours no place.
                off += mean[link] * (mean[link] - 2 * values[j]);
            }

            if (off < least) (best, least) = (begin, off);
        }

        return best;
    }
}
