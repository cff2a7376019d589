namespace WearWatch.Plant.Folders;

/// <summary>Makes one thing of each of many, on all processors.</summary>
internal static class InParallel
{
    /// <summary>What was made, in the order of what it was made from.</summary>
    /// <param name="from">What each is made from.</param>
    /// <param name="make">Makes one; it is called from several threads at once.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="ct">Stops between two of them.</param>
    public static async Task<TMade[]> MakeAsync<TFrom, TMade>(
        IReadOnlyList<TFrom> from, Func<TFrom, TMade> make, IProgress<double> progress, CancellationToken ct)
    {
        var made = new TMade[from.Count];
        var done = 0;
        await Parallel.ForAsync(0, from.Count, ct, (i, _) =>
        {
            made[i] = make(from[i]);
            progress.Report(Interlocked.Increment(ref done) / (double)from.Count);
            return ValueTask.CompletedTask;
        });
        return made;
    }
}
