using WearWatch.Wear;

namespace WearWatch.Lives;

/// <summary>How long one fitted chain lasted, and how that ended.</summary>
/// <remarks>
/// A life runs from fitting to the replacement limit, not to the day on which somebody took the chain off: a chain that was
/// left to run past its limit did not last longer for it, and one that was taken off early did not fail. Chains that have not
/// reached the limit count with the hours they are known to have lasted. To leave them out would make every class look worse
/// than it is, since the long lives are the ones not yet over.
/// </remarks>
public sealed record Life
{
    /// <summary>A life of so many hours.</summary>
    /// <param name="hours">Running hours, above zero.</param>
    /// <param name="end">How it ended.</param>
    public Life(double hours, LifeEnd end)
    {
        Hours = hours is > 0 and < double.PositiveInfinity
            ? hours
            : throw new ArgumentOutOfRangeException(nameof(hours), hours, "A life lasts more than zero running hours.");
        End = end;
    }

    /// <summary>Running hours from fitting to the end of the life, or as far as it is known.</summary>
    public double Hours { get; }

    /// <summary>How it ended.</summary>
    public LifeEnd End { get; }

    /// <summary>
    /// Of a suspended life the hours that its wear then left it to the limit; null where nothing was read, or the limit was
    /// reached.
    /// </summary>
    public WearForecast? Ahead { get; init; }

    /// <summary>Whether the chain reached its limit; otherwise the life is suspended.</summary>
    public bool Failed => End == LifeEnd.ReachedLimit;

    /// <summary>The life of a fitted chain against a limit, or null when nothing of it is known yet.</summary>
    /// <remarks>
    /// The limit counts as reached from the first reading at or above it that the next reading confirms; the last reading of a
    /// chain needs no other when the chain was then replaced. A lone high reading is a slip more often than a worn chain, and
    /// one reading later it is known which. The hours are interpolated between that reading and the one before it (before the
    /// first reading: from nothing at fitting).
    /// </remarks>
    /// <param name="chain">The fitted chain.</param>
    /// <param name="limitPercent">The elongation at which it is to be replaced, in percent.</param>
    public static Life? Of(FittedChain chain, double limitPercent)
    {
        if (chain.RunningHours <= 0) return null;
        if (FirstConfirmed(chain, limitPercent) is { } reached
            && HoursReached(chain.Observations, reached, limitPercent) is > 0 and var hours)
            return new Life(hours, LifeEnd.ReachedLimit);
        return new Life(chain.RunningHours, chain.Removed ? LifeEnd.ReplacedBefore : LifeEnd.StillRunning);
    }

    private static int? FirstConfirmed(FittedChain chain, double limitPercent)
    {
        var readings = chain.Observations;
        for (var i = 0; i < readings.Count; i++)
        {
            if (readings[i].ElongationPercent < limitPercent) continue;
            var confirmed = i + 1 < readings.Count ? readings[i + 1].ElongationPercent >= limitPercent : chain.Removed;
            if (confirmed) return i;
        }

        return null;
    }

    private static double HoursReached(IReadOnlyList<Observation> readings, int reached, double limitPercent)
    {
        var (hours, percent) = (readings[reached].HoursSinceFitting, readings[reached].ElongationPercent);
        var before = reached - 1;
        while (before >= 0 && readings[before].ElongationPercent >= limitPercent) before--;
        var (hoursBefore, percentBefore) = before >= 0
            ? (readings[before].HoursSinceFitting, readings[before].ElongationPercent)
            : (0.0, 0.0);
        return hoursBefore + (hours - hoursBefore) * (limitPercent - percentBefore) / (percent - percentBefore);
    }
}
