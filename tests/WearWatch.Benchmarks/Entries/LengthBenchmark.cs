namespace WearWatch.Benchmarks.Entries;

/// <summary>
/// 1,000 entries with each slip of a length on the mill, with dates and without, or on other fleets, and as many ordinary ones:
/// the newest of their chain, and amid others as in a file.
/// </summary>
internal static class LengthBenchmark
{
    /// <summary>So many ordinary ones, of which hardly any is to be asked about.</summary>
    private const int Ordinary = 1_000;
    private const int Seed = 3;

    /// <summary>Prints the shares; whether the bars of docs/gauging.md are kept.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="folders">Fleets; none for the mill.</param>
    /// <param name="entries">How many of each slip.</param>
    public static bool Run(TextWriter output, IReadOnlyList<string> folders, int entries) =>
        TrialFleet.Each(folders, (fleet, title) => Run(output, fleet, LengthTrial.Typed, title, entries)
            & Run(output, fleet, LengthTrial.Amid, title + ", older rows", entries));

    private static bool Run(TextWriter output, TrialFleet fleet, LengthTrial trial, string title, int entries)
    {
        var (asked, of) = trial.Honest(fleet, Ordinary, Seed);
        output.WriteLine(FormattableString.Invariant($"{title}: of {of} ordinary entries {asked} asked about"));
        var counts = LengthSlip.All.AsParallel().AsOrdered().Select(slip => trial.Of(fleet, slip, entries, Seed))
            .ToList();
        foreach (var count in counts) output.WriteLine(count);
        var named = counts.Where(c => c.Slip is LengthSlip.Swapped or LengthSlip.Missing).ToList();
        var neighbours = counts.Single(c => c.Slip == LengthSlip.Neighbour);
        return named.All(c => c.FirstShare >= 0.8) && neighbours.FirstShare >= 0.6
            && counts.Sum(c => c.Wrong) <= 0.03 * counts.Sum(c => c.HeldOfAll);
    }
}
