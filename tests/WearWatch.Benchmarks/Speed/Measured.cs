namespace WearWatch.Benchmarks.Speed;

/// <summary>
/// How much processor time something takes: unlike time on the wall, it does not count whatever else runs on the machine.
/// </summary>
internal static class Measured
{
    /// <summary>Processor time of one long run, after a short one for the compiler.</summary>
    public static TimeSpan Once(Action warmUp, Action action)
    {
        warmUp();
        GC.Collect();
        var before = Environment.CpuUsage.TotalTime;
        action();
        return Environment.CpuUsage.TotalTime - before;
    }

    /// <summary>Processor time of the quickest of some runs; a run before them is for the compiler.</summary>
    public static TimeSpan Quickest(int runs, Action action)
    {
        action();
        var best = TimeSpan.MaxValue;
        for (var i = 0; i < runs; i++)
        {
            GC.Collect();
            var before = Environment.CpuUsage.TotalTime;
            action();
            var took = Environment.CpuUsage.TotalTime - before;
            if (took < best) best = took;
        }

        return best;
    }
}
