using System.Numerics;

namespace WearWatch.Signals.Passes;

/// <summary>After how many passes the whole chain has come round once.</summary>
/// <remarks>
/// The phase comes back after one loop, whatever the speed does. As a sum of many links it stands out of the jitter and changes
/// little from one pass to the next; its steps find the pass.
/// </remarks>
internal static class LoopPeriod
{
    /// <summary>A shorter chain has no straight run for two sensors.</summary>
    private const int Shortest = 24;

    /// <summary>A longer one does not come round within a burst.</summary>
    private const int Longest = 2_000;

    /// <summary>So many passes tell as well as all of a day.</summary>
    private const int EnoughPasses = 25_000;

    /// <summary>What comes back is alike by this much at least, phase and steps together; jitter takes the rest.</summary>
    private const double Alike = 0.2;

    /// <summary>One loop is as alike as several, but for so much.</summary>
    private const double AsAlike = 0.9;

    private const int MostLoops = 4;

    /// <summary>A lag that fewer of the passes reach says little.</summary>
    private const double FewestPairs = 0.2;

    /// <summary>The loop in passes; null where the bursts are too short to show it, or nothing comes back.</summary>
    /// <param name="bursts">The bursts.</param>
    /// <param name="straight">Passes between the sensors at least: the chain comes back, so it is twice as long.</param>
    public static int? Of(IReadOnlyList<LoopSeries> bursts, double straight)
    {
        var some = bursts.Take(1 + EnoughPasses / bursts.Max(b => b.Phase.Length)).ToList();
        var longest = Math.Min(Longest, some.Max(b => b.Phase.Length));
        var shortest = Math.Max(Shortest, (int)(2 * straight));
        var (phases, steps) = (Padded(some.Select(b => b.Phase)), Padded(some.Select(b => b.Steps)));
        var alike = new double[longest];
        for (var lag = shortest; lag < longest; lag += Vector<double>.Count)
        {
            var here = Alikeness(phases, lag) + Alikeness(steps, lag);
            for (var lane = 0; lane < Vector<double>.Count && lag + lane < longest; lane++) alike[lag + lane] = here[lane];
        }

        if (alike.Max() is not (> Alike and var most)) return null;
        var best = Array.IndexOf(alike, most);
        // After two loops the chain has come back as well: the fewest passes are one loop.
        return Enumerable.Range(2, MostLoops - 1).Where(loops => best % loops == 0).Select(loops => best / loops)
            .Where(lag => alike[lag] > AsAlike * most).Append(best).Min();
    }

    /// <summary>Series with as many unknown values behind as are compared at once.</summary>
    private static List<double[]> Padded(IEnumerable<double[]> series) =>
        [.. series.Select(s => (double[])[.. s, .. Enumerable.Repeat(double.NaN, Vector<double>.Count)])];

    /// <summary>
    /// How alike values so many passes apart are, and so many and one, and so on side by side: -1 to 1; 0 where few tell.
    /// </summary>
    private static Vector<double> Alikeness(List<double[]> padded, int lag)
    {
        var (both, one, other, pairs) = (Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero);
        var all = 0;
        foreach (var values in padded)
        {
            var length = values.Length - Vector<double>.Count;
            all += length;
            for (var j = 0; j + lag < length; j++)
            {
                if (double.IsNaN(values[j])) continue;
                var (a, b) = (new Vector<double>(values[j]), new Vector<double>(values, j + lag));
                var known = Vector.Equals(b, b);
                both += Vector.ConditionalSelect(known, a * b, Vector<double>.Zero);
                one += Vector.ConditionalSelect(known, a * a, Vector<double>.Zero);
                other += Vector.ConditionalSelect(known, b * b, Vector<double>.Zero);
                pairs += Vector.ConditionalSelect(known, Vector<double>.One, Vector<double>.Zero);
            }
        }

        return Vector.ConditionalSelect(
            Vector.LessThan(pairs, new Vector<double>(FewestPairs * all)), Vector<double>.Zero,
            both / Vector.SquareRoot(one * other));
    }
}
