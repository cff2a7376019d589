namespace WearWatch.Benchmarks.Entries;

/// <summary>1,000 entries with each slip of a length on the mill, with dates and without, and as many ordinary ones.</summary>
internal static class LengthBenchmark
{
    private const int Entries = 1_000;
    private const int Seed = 3;

    /// <summary>Prints the shares; whether the bars of docs/gauging.md are kept.</summary>
    public static bool Run(TextWriter output)
    {
        var folder = Directory.CreateTempSubdirectory("wearwatch-lengths-").FullName;
        try
        {
            var dated = Run(output, TrialFleet.Mill(folder, dated: true), "with dates");
            return Run(output, TrialFleet.Mill(folder, dated: false), "without dates") && dated;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static bool Run(TextWriter output, TrialFleet fleet, string title)
    {
        var (asked, of) = LengthTrial.Honest(fleet, Entries, Seed);
        output.WriteLine(FormattableString.Invariant($"{title}: of {of} ordinary entries {asked} asked about"));
        var counts = LengthSlip.All.Select(slip => LengthTrial.Of(fleet, slip, Entries, Seed)).ToList();
        foreach (var count in counts) output.WriteLine(count);
        var named = counts.Where(c => c.Slip is LengthSlip.Swapped or LengthSlip.Missing).ToList();
        var neighbours = counts.Single(c => c.Slip == LengthSlip.Neighbour);
        return named.All(c => c.FirstShare >= 0.8) && neighbours.FirstShare >= 0.6
            && counts.Sum(c => c.Wrong) <= 0.03 * counts.Sum(c => c.HeldOfAll);
    }
}
