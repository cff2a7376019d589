using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>Below it nothing is known of a chain, and nothing is published but that, with the reading that did it.</summary>
/// <remarks>
/// A track whose elongation is known within half of the limit, or 1 %, only (half of the way from the 16 to the 84 % quantile)
/// says
/// nothing of a chain that was measured, unless its readings bear out that even the low end has passed the limit: a tape tells
/// 0.1 %. Nor does one that stands
/// where no chain runs any more. Common practice; docs/method.md.
/// </remarks>
internal static class KnowledgeFloor
{
    private const double TellingPercent = 1;
    private const double MostShareOfLimit = 0.5;
    private const double MoreLikelyThanNot = 0.5;

    /// <summary>So many readings are tried, newest first, whether without their counter something is known.</summary>
    private const int ReadingsToTry = 12;

    /// <summary>Whether an assessment says nothing of a chain that was measured.</summary>
    public static bool IsBelow(Assessment chain)
    {
        if (chain.ElongationPercent is null) return false;
        var telling = Math.Max(TellingPercent, MostShareOfLimit * chain.Limit.Percent);
        // A narrow track needs no second look, and most are.
        if (chain.ElongationStandardDeviationPercent < telling && Plausible.Holds(chain.ElongationPercent.Value)) return false;
        var spread = TrackSpread.At(new WearFilter(chain.Constants), chain.Track, chain.Track.Hours);
        var (low, middle, high) = (spread.Quantile(0.16), spread.Quantile(0.5), spread.Quantile(0.84));
        return !Plausible.Holds(middle) || ((high - low) / 2 > telling
            && (low < chain.Limit.Percent || chain.View.ProbabilityLastMisread > MoreLikelyThanNot));
    }

    /// <summary>
    /// What is left to say: the chain without the counter of the reading that did it, its condition not known, and why.
    /// </summary>
    /// <param name="lost">The assessment that says nothing.</param>
    /// <param name="without">Assesses the chain without the counter of a reading, by its index.</param>
    public static Assessment Told(Assessment lost, Func<int, Assessment> without)
    {
        foreach (var observation in lost.Observations.Select(o => o.Observation).Reverse().Take(ReadingsToTry))
        {
            var rest = without(observation.ReadingIndex);
            if (!IsBelow(rest)) return Unknown(rest, Why(observation)) with { NotKnownByReading = observation.ReadingIndex };
        }

        return Unknown(lost, $"Its readings and counters contradict one another so far that nothing is known of this chain.") with
        {
            ElongationPercent = null,
            ElongationStandardDeviationPercent = null,
        };
    }

    /// <summary>A chain that lifts and is out of use stays so.</summary>
    private static Assessment Unknown(Assessment chain, Phrase why) => chain with
    {
        Condition = chain.Card.HoldsLoad && chain.Condition == Condition.SwapNow ? Condition.SwapNow : Condition.NotKnown,
        WhyNotKnown = why,
    };

    private static Phrase Why(Observation reading) =>
        $"With the counter of the reading of {reading.ElongationPercent:0.00} % ({reading.HoursSinceFitting:#,0} running hours) "
        + $"nothing would be known of this chain. It is shown without that counter.";
}
