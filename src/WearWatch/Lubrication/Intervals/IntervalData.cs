namespace WearWatch.Lubrication.Intervals;

/// <summary>How much stands behind a learned interval.</summary>
/// <param name="Chains">Fitted chains whose readings could be used.</param>
/// <param name="Readings">Their readings.</param>
/// <param name="Oilings">Their oilings.</param>
/// <param name="RunningHours">Their running hours, together.</param>
/// <param name="MeanIntervalHours">Running hours from one oiling to the next, on average.</param>
/// <param name="LongestHours">
/// Nineteen of twenty running hours were run on oil no older than this: beyond it nothing was seen.
/// </param>
public sealed record IntervalData(
    int Chains, int Readings, int Oilings, double RunningHours, double MeanIntervalHours, double LongestHours);
