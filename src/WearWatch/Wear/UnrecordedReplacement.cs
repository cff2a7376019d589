namespace WearWatch.Wear;

/// <summary>
/// Finds a new chain in the readings of a position when nobody wrote down that one was fitted, and when that was.
/// </summary>
/// <remarks>
/// A fall by more than <c>max(0.35, 8 sd)</c> to below 0.75 %, from readings that both lay above, and the next reading stays
/// down. Where fittings are recorded here, more has to speak against the record: three readings before and two after. A misread
/// length alone never does it.
/// </remarks>
internal static class UnrecordedReplacement
{
    /// <summary>More than this no chain has just after it was run in.</summary>
    public const double NewChainBelowPercent = 0.75;

    private const double LeastFallPercent = 0.35;
    private const double FallOverScatter = 8;
    private const int Strips = 16;
    private const int ReadingsThatTell = 6;

    /// <summary>Where in a chain's observations the next chain begins; null when one chain gave them all.</summary>
    /// <param name="observations">Observations of one position between two recorded fittings, in order.</param>
    /// <param name="fittingsRecorded">Whether fittings are recorded at this position.</param>
    public static int? StartIn(IReadOnlyList<Observation> observations, bool fittingsRecorded)
    {
        var (worn, staysDown) = fittingsRecorded ? (3, 2) : (1, 1);
        for (var i = worn; i + staysDown < observations.Count; i++)
        {
            var now = observations[i];
            var fall = Math.Max(LeastFallPercent, FallOverScatter * now.ScatterPercent);
            var last = observations[i - 1].ElongationPercent;
            if (now.ElongationPercent < NewChainBelowPercent && last - now.ElongationPercent > fall
                && Enumerable.Range(Math.Max(0, i - Math.Max(worn, 2)), Math.Min(i, Math.Max(worn, 2)))
                    .All(k => observations[k].ElongationPercent - now.ElongationPercent > fall / 2)
                && Enumerable.Range(i + 1, staysDown).All(k => last - observations[k].ElongationPercent > fall / 2))
                return i;
        }

        return null;
    }

    /// <summary>
    /// How many hours before its first reading a chain was fitted, when it was after the last reading of the chain before.
    /// </summary>
    /// <remarks>
    /// The mean over the gap, every moment of it as likely as any other beforehand and weighed by how well a chain fitted then
    /// explains its first readings. Without it a gap of years would put a new chain halfway through it.
    /// </remarks>
    /// <param name="gapHours">Running hours between the two readings.</param>
    /// <param name="observations">Observations of the new chain.</param>
    public static double HoursBeforeFirstReading(double gapHours, IEnumerable<Observation> observations)
    {
        Observation[] first = [.. observations.Take(ReadingsThatTell)];
        double[] hours = [.. Enumerable.Range(0, Strips).Select(k => gapHours * (k + 0.5) * (k + 0.5) / (Strips * Strips))];
        // The strips widen with the distance, so that the run-in of the first hours is not stepped over.
        double[] logs = [.. hours.Select((h, k) => Math.Log(2 * k + 1) + Evidence(h))];
        var best = logs.Max();
        var weights = Array.ConvertAll(logs, l => Math.Exp(l - best));
        return hours.Zip(weights, (h, w) => h * w).Sum() / weights.Sum();

        double Evidence(double before) => WearFilter.Default.Follow(
            WearPrior.Broad,
            first.Select(o => o with { HoursSinceFitting = o.HoursSinceFitting - first[0].HoursSinceFitting + before }))
            .Clocks[0].LogEvidence;
    }
}
