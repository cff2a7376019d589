using WearWatch.Gauging;

namespace WearWatch.Wear;

/// <summary>One fitted chain, from fitting to removal.</summary>
/// <param name="FittingRecorded">Whether its fitting is recorded, or was concluded from the readings.</param>
/// <param name="RunningHours">Running hours from fitting to its last reading or its removal.</param>
/// <param name="Removed">Whether it has been replaced.</param>
/// <param name="Observations">Its readings in order of running hours.</param>
public sealed record FittedChain(bool FittingRecorded, double RunningHours, bool Removed, IReadOnlyList<Observation> Observations)
{
    /// <summary>
    /// Whether the hours count from its fitting, recorded or concluded. If not they count from its first reading, and how far it
    /// was worn by then only that reading tells.
    /// </summary>
    public bool FittingKnown { get; init; } = true;

    /// <summary>Which of the readings was its last, from 0, used or held back; null without any.</summary>
    public int? LastReadingIndex { get; init; }

    /// <summary>
    /// Readings, by their index, of places and strands that were not the worst of their visit: the worst one is among the
    /// observations.
    /// </summary>
    public IReadOnlyList<int> Outdone { get; init; } = [];

    /// <summary>How much its strands differed at its last visit; null when fewer than two were measured.</summary>
    public StrandSpread? Strands { get; init; }

    /// <summary>When it was fitted, if that was told.</summary>
    public DateTimeOffset? FittedAt { get; init; }

    /// <summary>The supplier's lot it came from, or empty.</summary>
    public string Lot { get; init; } = "";

    /// <summary>
    /// The run-in that it still has before it at some running hours, in percent, and that its track counts as done.
    /// </summary>
    /// <remarks>
    /// None where nothing tells when it was fitted: then it is taken to be over. Source: docs/method.md, section 2.
    /// </remarks>
    public double RunInLeftPercent(double hours, WearConstants constants) =>
        FittingKnown ? constants.RunInPercent * Math.Exp(-hours / constants.RunInHours) : 0;
}
