namespace WearWatch.Wear;

/// <summary>What one more reading of a chain may show, and what would then be forecast.</summary>
/// <remarks>
/// The reading is taken as normal about what the track expects, with the track's and the gauge's variance; five Gauss-Hermite
/// nodes stand for it (Abramowitz and Stegun, table 25.10, from memory). The track is carried on by each.
/// </remarks>
/// <param name="Weight">Probability of the outcome.</param>
/// <param name="Percent">The elongation that is read, in percent.</param>
/// <param name="Forecast">The hours left from the moment of the reading.</param>
public readonly record struct ReadingToCome(double Weight, double Percent, WearForecast Forecast)
{
    private static readonly (double Deviations, double Weight)[] Nodes =
        [(-2.8569700139, 0.0112574113), (-1.3556261800, 0.2220759220), (0, 0.5333333333), (1.3556261800, 0.2220759220),
            (2.8569700139, 0.0112574113)];

    /// <summary>The outcomes of a reading taken now; their weights sum to one.</summary>
    /// <param name="filter">The filter that carries the track.</param>
    /// <param name="chain">The chain.</param>
    /// <param name="track">Its track up to its last reading.</param>
    /// <param name="hours">Its running hours now, since fitting; not before its last reading.</param>
    /// <param name="scatterPercent">Standard deviation of the reading to come, in percent of elongation; above zero.</param>
    /// <param name="limitPercent">The limit in percent.</param>
    public static IReadOnlyList<ReadingToCome> Outcomes(
        WearFilter filter, FittedChain chain, WearTrack track, double hours, double scatterPercent, double limitPercent)
    {
        var (percent, deviation) = filter.Expect(chain, track.Prior, Math.BitIncrement(hours));
        var spread = Math.Sqrt(deviation * deviation + scatterPercent * scatterPercent);
        return [.. Nodes.Select(node =>
        {
            var read = percent + node.Deviations * spread;
            var after = filter.Step(chain, track, new Observation(hours, read, scatterPercent, track.Readings));
            return new ReadingToCome(node.Weight, read, filter.Forecast(after, limitPercent));
        })];
    }
}
