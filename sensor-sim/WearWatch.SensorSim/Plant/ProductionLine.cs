using System.Globalization;

namespace WearWatch.SensorSim.Plant;

/// <summary>A line of the mill: its positions stop and run together.</summary>
internal sealed class ProductionLine
{
    /// <summary>Makes a line and gives its positions their chains' names.</summary>
    public ProductionLine(string name, string letters, ShiftPattern shifts, IEnumerable<MillPosition> positions)
    {
        Name = name;
        Shifts = shifts;
        Positions = [.. positions.Select((position, index) => position with
        {
            ChainName = string.Create(CultureInfo.InvariantCulture, $"{letters}-{index + 1:00}"),
        })];
    }

    /// <summary>What the line makes of the wood.</summary>
    public string Name { get; }

    /// <summary>When it is planned to run.</summary>
    public ShiftPattern Shifts { get; }

    /// <summary>Where its chains run.</summary>
    public IReadOnlyList<MillPosition> Positions { get; }
}
