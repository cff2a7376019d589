namespace WearWatch.SensorSim.Live;

/// <summary>
/// The machines of the mill that publish: counters, temperatures, lubricators and pairs of sensors on running chains.
/// </summary>
/// <remarks>Not safe for use by several threads at once; ask for one stretch of time after the other.</remarks>
public sealed class LiveMill
{
    private readonly string plant;

    /// <summary>Makes the machines of a mill.</summary>
    /// <param name="mill">The mill; its history is the past of these machines.</param>
    /// <param name="plant">The plant's level in the topics.</param>
    /// <param name="seed">The seed of the sensors' chance.</param>
    public LiveMill(Mill mill, string plant, int seed)
    {
        this.plant = plant;
        Positions = [.. mill.Histories.Where(h => h.Position.HasSensors)
            .Select((h, i) => new LivePosition(h, seed + i, mill.EndsAt))];
    }

    /// <summary>The names of the chains that have sensors.</summary>
    public static IReadOnlyList<string> Chains { get; } =
        [.. Mill.Lines.SelectMany(l => l.Positions).Where(p => p.HasSensors).Select(p => p.ChainName)];

    /// <summary>The positions that have sensors.</summary>
    public IReadOnlyList<LivePosition> Positions { get; }

    /// <summary>What is published from one moment (included) to another (not included), in order of time.</summary>
    /// <param name="from">The beginning.</param>
    /// <param name="to">The end.</param>
    /// <param name="fault">What is wrong.</param>
    /// <param name="faultyChain">At which chain it is wrong.</param>
    public IEnumerable<LiveMessage> Between(
        DateTimeOffset from, DateTimeOffset to, LiveFault fault = LiveFault.None, string? faultyChain = null) =>
        Positions.SelectMany(p => p.Between(plant, from, to, p.Chain == faultyChain ? fault : LiveFault.None)).OrderBy(m => m.At);
}
