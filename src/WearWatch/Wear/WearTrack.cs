namespace WearWatch.Wear;

/// <summary>
/// Our belief about one fitted chain after its readings so far: a small value that can be stored and carried on.
/// </summary>
/// <remarks>
/// It belongs to the constants with which it was made. Its numbers survive a round trip through JSON to the bit.
/// </remarks>
public sealed record WearTrack
{
    /// <summary>What was believed before the first reading.</summary>
    public required WearPrior Prior { get; init; }

    /// <summary>How many readings it has seen.</summary>
    public required int Readings { get; init; }

    /// <summary>Running hours since fitting at the last reading; zero without readings.</summary>
    public required double Hours { get; init; }

    /// <summary>
    /// The clocks that differ so far: the even clock first, then that of the plant's own curve, if there is one, and one for
    /// every onset that a reading has passed. Before the first reading the even clock alone, by the prior.
    /// </summary>
    public required IReadOnlyList<ClockTrack> Clocks { get; init; }

    /// <summary>The track of a chain at its fitting.</summary>
    public static WearTrack AtFitting(WearPrior prior) => At(0, prior);

    /// <summary>The track of a chain whose prior holds at some running hours rather than at its fitting.</summary>
    public static WearTrack At(double hours, WearPrior prior) => new()
    {
        Prior = prior,
        Readings = 0,
        Hours = hours,
        Clocks = [new ClockTrack(null, 0, [Hypothesis.At(hours, Belief.AtFitting(prior))])],
    };
}
