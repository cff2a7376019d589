using WearWatch.Planning.Windows;

namespace WearWatch.Benchmarks.Years;

/// <summary>Nobody measures; a chain is swapped when it breaks.</summary>
internal sealed class RunToFailure : Way
{
    public override string Name => "run to failure";

    public override bool Measures(Position position, DateTimeOffset now) => false;

    public override Task DecideAsync(IReadOnlyList<Position> mill, IReadOnlyList<ShutdownWindow> windows, DateTimeOffset now) =>
        Task.CompletedTask;
}

/// <summary>Nobody measures; a chain is swapped in the last shutdown before so many running hours.</summary>
/// <param name="hours">The interval.</param>
internal sealed class FixedInterval(double hours) : Way
{
    /// <summary>The intervals from which hindsight takes the cheapest.</summary>
    public static IEnumerable<double> Choices => Enumerable.Range(0, 24).Select(i => 1500 * Math.Pow(1.12, i));

    public override string Name => "fixed interval, best in hindsight";

    public override bool Measures(Position position, DateTimeOffset now) => false;

    public override Task DecideAsync(IReadOnlyList<Position> mill, IReadOnlyList<ShutdownWindow> windows, DateTimeOffset now)
    {
        foreach (var position in mill)
        {
            position.SwapIn = windows.Where(w => w.Line == position.Line).LastOrDefault(w =>
                position.Hours + Mill.Calendar.Between(now, w.Start).Hours <= hours)?.Id;
            if (position.Hours + Mill.Calendar.Between(now, windows.Max(w => w.Start)).Hours < hours) position.SwapIn = null;
            else position.SwapIn ??= windows.First(w => w.Line == position.Line).Id;
        }

        return Task.CompletedTask;
    }
}

/// <summary>Measured every four weeks; a chain is swapped in the next shutdown once a reading is at the limit.</summary>
internal sealed class WhenMeasuredAtLimit : Way
{
    public override string Name => "swapped when measured at the limit";

    public override bool Measures(Position position, DateTimeOffset now) =>
        position.MeasuredAt is not { } last || now >= last.AddDays(28);

    public override Task DecideAsync(IReadOnlyList<Position> mill, IReadOnlyList<ShutdownWindow> windows, DateTimeOffset now)
    {
        foreach (var position in mill.Where(p => p.Observations.Any(o => o.ElongationPercent >= TrueLife.LimitPercent)))
            position.SwapIn = windows.First(w => w.Line == position.Line).Id;
        return Task.CompletedTask;
    }
}
