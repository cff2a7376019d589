namespace WearWatch.Benchmarks.Entries;

/// <summary>
/// 100 rows of the mill, readings and events, with each slip in any field: how far the early date moves where nobody is asked.
/// </summary>
internal static class MovesBenchmark
{
    private const int Entries = 100;
    private const int Seed = 5;

    /// <summary>Prints them; whether none moves it by more than 90 days.</summary>
    public static bool Run(TextWriter output)
    {
        var folder = Directory.CreateTempSubdirectory("wearwatch-moves-").FullName;
        try
        {
            var fleet = TrialFleet.Mill(folder, dated: true);
            var counts = AnySlip.All.Select(slip => AnySlipTrial.Of(fleet, slip, Entries, Seed)).ToList();
            foreach (var count in counts) output.WriteLine(count);
            var events = EventSlip.All.Select(slip => EventSlipTrial.Of(fleet, slip, Entries, Seed)).ToList();
            foreach (var count in events) output.WriteLine(count);
            return counts.Sum(c => c.Moved) + events.Sum(c => c.Moved) == 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
