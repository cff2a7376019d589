namespace WearWatch.Benchmarks.Entries;

/// <summary>
/// 1,000 entries with each slip of a counter on the mill, with its dates and without, or on other fleets, and as many ordinary
/// ones.
/// </summary>
internal static class SlipBenchmark
{
    /// <summary>So many ordinary ones, of which hardly any is to be asked about.</summary>
    private const int Ordinary = 1_000;
    private const int Seed = 2;

    /// <summary>Prints the shares; whether the bars of docs/gauging.md are kept.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="folders">Fleets; none for the mill.</param>
    /// <param name="entries">How many of each slip.</param>
    public static bool Run(TextWriter output, IReadOnlyList<string> folders, int entries) =>
        TrialFleet.Each(folders, (fleet, title) => Run(output, fleet, title, entries));

    /// <summary>A date that is off by a day nothing can tell.</summary>
    private static bool IsHeld(IReadOnlyList<SlipCount> counts, double share) =>
        counts.Sum(c => c.Held) >= share * counts.Sum(c => c.Matter);

    private static bool Run(TextWriter output, TrialFleet fleet, string title, int entries)
    {
        var (asked, of) = SlipTrial.Honest(fleet, Ordinary, Seed);
        output.WriteLine(FormattableString.Invariant($"{title}: of {of} ordinary entries {asked} asked about"));
        var counts = TrialSlip.OfCounters.AsParallel().AsOrdered()
            .Select(slip => SlipTrial.Of(fleet, slip, entries, Seed)).Where(c => c.Made > 0).ToList();
        foreach (var count in counts) output.WriteLine(count);
        return asked < 0.005 * of && IsHeld([.. counts.Where(c => c.Slip != "day")], fleet.IsDated ? 0.99 : 0.9);
    }
}
