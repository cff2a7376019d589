using WearWatch.Gauging;

namespace WearWatch.Signals.Passes;

/// <summary>
/// Counts the whole pitches between the sensors by the pattern of the joints: no two links of a chain are quite alike.
/// </summary>
/// <remarks>
/// While a link passes the second sensor, a little more or less than one of the links at the first sensor passes there. That
/// excess is the difference of two links at one instant and holds nothing of the speed, whatever it does
/// (<see cref="SpeedFree"/>). The link that passes the second sensor has passed the first one l passes before: so its excess goes
/// along with the interval that it made there, at the true count l and at no other. That interval holds the speed, which the
/// excess does not: so swing and run-out add scatter and favour no count. Where that is too weak, as with a new chain, the two
/// intervals of a link are held together as well: they say more, and may be led astray by what of the speed is left in both. So
/// they have to stand out further, and the excess must be highest at the same count.
/// </remarks>
public sealed class JointPattern
{
    /// <summary>The excess alone: no speed can lead it astray.</summary>
    private static readonly PatternProof Free = new(Clear: 2.5, LeadOfCounts: 4, LeadOfKinds: 2);

    /// <summary>The intervals, when the excess is highest at the same count.</summary>
    private static readonly PatternProof Both = new(Clear: 4, LeadOfCounts: 2.5, LeadOfKinds: 1.5);

    private readonly SensorPair pair;
    private readonly PairedSums free;
    private readonly PairedSums intervals;

    /// <summary>Begins to count.</summary>
    /// <param name="pair">The sensors.</param>
    public JointPattern(SensorPair pair)
    {
        this.pair = pair;
        // What the two series have in common by the jitter of one time must stay below the counts that can be.
        Half = Math.Clamp(((int)(pair.NominalPitches / Gauge.LongestShare) - 4) / 2, 2, 6);
        // Twice the pitches, where each pitch is told twice, and some more.
        var reach = (int)Math.Ceiling(2 * pair.NominalPitches / Gauge.ShortestShare) + 12;
        (free, intervals) = (new PairedSums(reach), new PairedSums(reach));
    }

    /// <summary>Half the width of the local parabola that takes the speed out of the intervals, in links.</summary>
    internal int Half { get; }

    /// <summary>Adds a burst.</summary>
    /// <param name="first">Passes at the first sensor.</param>
    /// <param name="second">Passes at the second sensor.</param>
    /// <param name="fraction">
    /// The day's part of a pitch: the count is that of the whole pitches that go with it, also where a burst's own
    /// phase has come over a whole number.
    /// </param>
    public void Add(PassTrain first, PassTrain second, double fraction)
    {
        var before = LinkSeries.Of(SpeedFree.Intervals(first), pair.DriverTeeth, Half);
        var (excess, places) = SpeedFree.Excess(first, second);
        free.Add(before, LinkSeries.Of(excess, pair.DriverTeeth, 0), places, fraction);
        intervals.Add(before, LinkSeries.Of(SpeedFree.Intervals(second), pair.DriverTeeth, Half), places, fraction);
    }

    /// <summary>The count at which the excess is highest, proven or not.</summary>
    internal PatternCount? Highest => Read(free, null);

    /// <summary>What the pattern tells; null when it does not tell.</summary>
    internal PatternCount? Count()
    {
        if (Read(free, Free) is { } clear) return clear;
        return Read(intervals, Both) is { } count && count == Highest ? count : null;
    }

    /// <summary>Whether the pattern is for one count rather than for another.</summary>
    /// <param name="count">Passes between a link's passing the sensors; below none where it passes the second one first.</param>
    /// <param name="other">Those of the other.</param>
    /// <param name="lead">By how many standard deviations it has to be.</param>
    internal bool Prefers(int count, int other, double lead)
    {
        var ahead = free.Lead(count, other);
        return ahead >= lead || (ahead > 0 && intervals.Lead(count, other) >= lead + 1);
    }

    private PatternCount? Read(PairedSums sums, PatternProof? proof) =>
        PatternCount.Of(pair, sums, 2 * Half + 1, proof);
}
