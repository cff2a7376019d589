using WearWatch.Wear;

namespace WearWatch.Entries;

/// <summary>
/// What a chain is expected to show amid its readings: on the way from where its track stood to the next reading that goes on
/// from there.
/// </summary>
internal static class TrackBetween
{
    /// <summary>A reading farther off what the track expected of it says nothing of those before it.</summary>
    private const double GoesOnDeviations = 3;

    /// <summary>
    /// The expectation at some hours; null where nothing was read before, or what came after does not go on from there: a chain
    /// that was replaced without record, or that wears faster.
    /// </summary>
    /// <param name="before">The chain with its earlier observations.</param>
    /// <param name="after">Its later observations, the reading that is asked about left out.</param>
    /// <param name="prior">What is believed of it before its first reading.</param>
    /// <param name="hours">Running hours since fitting at the moment.</param>
    public static Expectation? Of(FittedChain before, IReadOnlyList<Observation> after, WearPrior prior, double hours)
    {
        if (before.Observations is not [.., var last]) return null;
        foreach (var next in after)
        {
            if (!GoesOn(next, TrackAhead.Of(before, prior, next.HoursSinceFitting))) continue;
            var way = Way(last.HoursSinceFitting, TrackAhead.Of(before, prior, last.HoursSinceFitting), next, hours);
            var ahead = TrackAhead.Of(before, prior, hours);
            // Had it begun to wear faster, the next reading would not go on so: no growth is told of which there may be more.
            return (way.StandardDeviationPercent < ahead.StandardDeviationPercent ? way : ahead) with { GrowthPercent = 0 };
        }

        return null;
    }

    private static bool GoesOn(Observation next, Expectation expected) =>
        Math.Abs(next.ElongationPercent - expected.MeanPercent) <= GoesOnDeviations * Math.Sqrt(
            Square(expected.StandardDeviationPercent) + Square(next.ScatterPercent));

    /// <summary>
    /// The growth between the two as the hours go; where on the way most of it came is not known, so that it is as much as any
    /// share of it amid them.
    /// </summary>
    private static Expectation Way(double fromHours, Expectation from, Observation next, double hours)
    {
        var whole = next.HoursSinceFitting - fromHours;
        var share = whole > 0 ? (hours - fromHours) / whole : 0.5;
        var growth = next.ElongationPercent - from.MeanPercent;
        return new Expectation(
            from.MeanPercent + share * growth,
            Math.Sqrt(Square((1 - share) * from.StandardDeviationPercent) + Square(share * next.ScatterPercent)
                + share * (1 - share) / 3 * growth * growth));
    }

    private static double Square(double x) => x * x;
}
