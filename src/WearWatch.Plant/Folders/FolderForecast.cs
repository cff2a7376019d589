using WearWatch.Lubrication;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Plant.Folders;

/// <summary>Forecasts every chain of a folder as of its last reading.</summary>
public static class FolderForecast
{
    /// <summary>The assessments, in the order of the register.</summary>
    public static async Task<IReadOnlyList<Assessment>> MakeAsync(
        IReadOnlyList<FolderChain> chains, FolderModels models, FolderConstants constants, IProgress<double> progress,
        CancellationToken ct)
    {
        var made = new Assessment[chains.Count];
        var done = 0;
        await Parallel.ForAsync(0, chains.Count, ct, (i, _) =>
        {
            made[i] = Make(chains[i], models, constants);
            progress.Report(Interlocked.Increment(ref done) / (double)chains.Count);
            return ValueTask.CompletedTask;
        });
        return made;
    }

    private static Assessment Make(FolderChain chain, FolderModels models, FolderConstants constants)
    {
        // As of its last reading: no hours have gone by since, whether or not its time was told.
        var lastReading = chain.Readings.LastOrDefault(r => r.TakenAt is not null)?.TakenAt ?? chain.Card.FittedAt
            ?? DateTimeOffset.UnixEpoch;
        var seen = DutySeen.AtLastReading(
            chain.Card.After(chain.Events), chain.Readings, chain.Events, ProductionCalendar.AlwaysRunning);
        return Assessment.Of(
            chain.Card, chain.Readings, chain.Events, models.PriorFor(seen), ProductionCalendar.AlwaysRunning, lastReading,
            constants.For(chain.Card));
    }
}
