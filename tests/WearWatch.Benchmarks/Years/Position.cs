using WearWatch.Benchmarks.Worlds;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Years;

/// <summary>A position of the mill with the chain that runs there, and what its people know of it.</summary>
/// <param name="index">Which position.</param>
/// <param name="line">Its line.</param>
/// <param name="life">The truth about the chain that runs there first.</param>
/// <param name="hours">Hours that it has run already.</param>
internal sealed class Position(int index, string line, TrueLife life, double hours)
{
    /// <summary>Of the tape, in percent of elongation.</summary>
    public const double ScatterPercent = 0.05;

    private const double MisreadShare = 0.02;
    private const double MisreadPercent = 0.8;

    private readonly List<Observation> observations = [];

    public int Index { get; } = index;

    public string Name { get; } = $"C{index:000}";

    public string Line { get; } = line;

    /// <summary>The truth, which only the mill itself and the oracle may ask.</summary>
    public TrueLife Life { get; private set; } = life;

    /// <summary>Running hours of its chain.</summary>
    public double Hours { get; private set; } = hours;

    /// <summary>How many chains have been fitted here, the first not counted.</summary>
    public int Fitted { get; private set; }

    public IReadOnlyList<Observation> Observations => observations;

    public DateTimeOffset? MeasuredAt { get; private set; }

    /// <summary>The shutdown in which its chain is to be swapped, if that is decided.</summary>
    public string? SwapIn { get; set; }

    public void Run(double more) => Hours += more;

    /// <summary>Takes a tape to it.</summary>
    public void Measure(DateTimeOffset now)
    {
        var chance = new Chance(Life.ReadingSeed ^ (int)(now.UtcTicks / TimeSpan.TicksPerDay));
        var error = ScatterPercent * chance.Normal() + (chance.Share() < MisreadShare ? MisreadPercent * chance.Normal() : 0);
        observations.Add(new Observation(Hours, Life.PercentAt(Hours) + error, ScatterPercent, observations.Count));
        MeasuredAt = now;
    }

    /// <summary>Takes its chain off; what was known of it.</summary>
    /// <param name="next">The truth about the new chain.</param>
    public FittedChain Swap(TrueLife next)
    {
        var old = Known(removed: true);
        (Life, Hours, Fitted, SwapIn, MeasuredAt) = (next, 0, Fitted + 1, null, null);
        observations.Clear();
        return old;
    }

    /// <summary>What is known of the chain that runs here.</summary>
    public FittedChain Known(bool removed) => new(true, Hours, removed, [.. observations]);
}
