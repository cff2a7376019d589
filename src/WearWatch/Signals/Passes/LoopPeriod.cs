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
        var alike = new double[longest];
        for (var lag = shortest; lag < longest; lag++)
            alike[lag] = Alikeness(some, b => b.Phase, lag) + Alikeness(some, b => b.Steps, lag);
        if (alike.Max() is not (> Alike and var most)) return null;
        var best = Array.IndexOf(alike, most);
        // After two loops the chain has come back as well: the fewest passes are one loop.
        return Enumerable.Range(2, MostLoops - 1).Where(loops => best % loops == 0).Select(loops => best / loops)
            .Where(lag => alike[lag] > AsAlike * most).Append(best).Min();
    }

    /// <summary>How alike values so many passes apart are, -1 to 1; 0 where few tell.</summary>
    private static double Alikeness(IReadOnlyList<LoopSeries> bursts, Func<LoopSeries, double[]> of, int lag)
    {
        var (both, one, other, pairs) = (0.0, 0.0, 0.0, 0);
        foreach (var values in bursts.Select(of))
        {
            for (var j = 0; j + lag < values.Length; j++)
            {
                var (a, b) = (values[j], values[j + lag]);
                if (double.IsNaN(a) || double.IsNaN(b)) continue;
                both += a * b;
                one += a * a;
                other += b * b;
                pairs++;
            }
        }

        return pairs < FewestPairs * bursts.Sum(b => of(b).Length) ? 0 : both / Math.Sqrt(one * other);
    }
}
