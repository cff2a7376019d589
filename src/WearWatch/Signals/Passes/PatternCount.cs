using WearWatch.Gauging;
using WearWatch.Trends;

namespace WearWatch.Signals.Passes;

/// <summary>What the pattern of the joints tells of the passes.</summary>
/// <param name="Kind">How the sensors see the chain.</param>
/// <param name="Pitches">The whole pitches between the sensors, when they see each roller in the order that was told.</param>
internal sealed record PatternCount(PatternKind Kind, int Pitches)
{
    private const int FewestBursts = 6;
    private const int FewestOthers = 20;

    /// <summary>Reads the sums of the bursts.</summary>
    /// <param name="pair">The sensors.</param>
    /// <param name="sums">The bursts' sums.</param>
    /// <param name="sameTime">Counts up to this many from none hold the same jitter in both series and say nothing.</param>
    /// <param name="proof">How far it has to stand out; null asks for the highest count alone.</param>
    public static PatternCount? Of(SensorPair pair, PairedSums sums, int sameTime, PatternProof? proof)
    {
        var (bursts, pairs) = (sums.Bursts, sums.Pairs);
        if (bursts.Count < FewestBursts) return null;
        var (middle, fewest) = (pairs.Count / 2, pairs.Max() / 8);
        var heights = new double[pairs.Count];
        Array.Fill(heights, double.NaN);
        for (var k = 0; k < heights.Length; k++)
        {
            // What has few pairs says little.
            if (pairs[k] < fewest || Math.Abs(k - middle) <= sameTime) continue;
            heights[k] = bursts.Sum(burst => burst[k]) / Math.Sqrt(pairs[k]);
        }

        if (Best(heights, middle, pair) is not { } best) return null;
        var kind = KindOf(pair, best - middle)!.Value;
        if (proof is null) return new PatternCount(kind, best - middle);
        double[] others = [.. heights.Where((h, k) => double.IsFinite(h) && Math.Abs(k - best) > 1)];
        if (others.Length < FewestOthers || heights[best] < proof.Clear * Median.DeviationAbout(0, others)) return null;
        for (var k = 0; k < heights.Length; k++)
        {
            if (k == best || double.IsNaN(heights[k]) || KindOf(pair, k - middle) is not { } other) continue;
            // Of a wrong kind it is enough to know the kind.
            if (other == kind && kind != PatternKind.EachRoller) continue;
            var lead = other == kind ? proof.LeadOfCounts : proof.LeadOfKinds;
            if (sums.Lead(best - middle, k - middle) < lead) return null;
        }

        return new PatternCount(kind, best - middle);
    }

    /// <summary>The highest of the counts that can be, in whatever way the sensors see the chain.</summary>
    private static int? Best(double[] heights, int middle, SensorPair pair)
    {
        int? best = null;
        for (var k = 0; k < heights.Length; k++)
        {
            if (double.IsNaN(heights[k]) || KindOf(pair, k - middle) is null) continue;
            if (best is null || heights[k] > heights[best.Value]) best = k;
        }

        return best;
    }

    /// <summary>How the sensors see a chain whose pattern comes back after so many passes; null when no chain is so.</summary>
    internal static PatternKind? KindOf(SensorPair pair, int count)
    {
        return IsNear(count, 1) ? PatternKind.EachRoller
            : IsNear(-count - 1, 1) ? PatternKind.Backwards
            : IsNear(count, 0.5) ? PatternKind.EverySecondRoller
            : IsNear(count, 2) ? PatternKind.HalfPitches
            : null;

        bool IsNear(int pitches, double share) =>
            pitches >= Math.Floor(share * pair.NominalPitches / Gauge.LongestShare) - 1
            && pitches <= Math.Ceiling(share * pair.NominalPitches / Gauge.ShortestShare);
    }
}
