using WearWatch.Planning.Windows;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Years;

/// <summary>A way of running the mill: what is measured when, and which chain is swapped in which shutdown.</summary>
internal abstract class Way
{
    public abstract string Name { get; }

    /// <summary>Whether a chain is measured this week.</summary>
    public abstract bool Measures(Position position, DateTimeOffset now);

    /// <summary>Decides, once in four weeks, by setting <see cref="Position.SwapIn"/>.</summary>
    public abstract Task DecideAsync(IReadOnlyList<Position> mill, IReadOnlyList<ShutdownWindow> windows, DateTimeOffset now);

    /// <summary>Learns, once a year, from all chains that ever ran.</summary>
    public virtual void Learn(IReadOnlyList<FittedChain> chains)
    {
    }

    /// <summary>The odds of the hours left that it tells of a chain; null for a way that tells none.</summary>
    public virtual WearForecast? Forecast(Position position) => null;
}
