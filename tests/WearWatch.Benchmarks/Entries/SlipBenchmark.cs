namespace WearWatch.Benchmarks.Entries;

/// <summary>
/// 1,000 entries with each slip of a counter on the mill, with its dates and without, or on other fleets, and as many ordinary
/// ones.
/// </summary>
internal static class SlipBenchmark
{
    private const int Entries = 1_000;
    private const int Seed = 2;

    /// <summary>Prints the shares; whether the bars of docs/method.md are kept.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="folders">Fleets whose files have no dates; none for the mill.</param>
    public static bool Run(TextWriter output, IReadOnlyList<string> folders)
    {
        if (folders.Count > 0)
        {
            return folders.Select(f => Run(output, TrialFleet.Folder(f), Path.GetFileName(f), held: 0.9)).ToList()
                .TrueForAll(kept => kept);
        }

        var folder = Directory.CreateTempSubdirectory("wearwatch-slips-").FullName;
        try
        {
            // Both run, so that the table is whole also where a bar is missed.
            var dated = Run(output, TrialFleet.Mill(folder, dated: true), "with dates", held: 0.99);
            return Run(output, TrialFleet.Mill(folder, dated: false), "without dates", held: 0.9) && dated;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>A date that is off by a day nothing can tell.</summary>
    private static bool IsHeld(IReadOnlyList<SlipCount> counts, double share) =>
        counts.Sum(c => c.Held) >= share * counts.Sum(c => c.Matter);

    private static bool Run(TextWriter output, TrialFleet fleet, string title, double held)
    {
        var (asked, of) = SlipTrial.Honest(fleet, Entries, Seed);
        output.WriteLine(FormattableString.Invariant($"{title}: of {of} ordinary entries {asked} asked about"));
        var counts = TrialSlip.OfCounters.Select(slip => SlipTrial.Of(fleet, slip, Entries, Seed)).Where(c => c.Made > 0)
            .ToList();
        foreach (var count in counts) output.WriteLine(count);
        return asked < 0.005 * of && IsHeld([.. counts.Where(c => c.Slip != "day")], held);
    }
}
