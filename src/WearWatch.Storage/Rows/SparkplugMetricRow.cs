namespace WearWatch.Storage.Rows;

/// <summary>A metric of a Sparkplug edge node, or of one of its devices, as its last birth named it.</summary>
public sealed class SparkplugMetricRow
{
    public int Id { get; init; }

    public int NodeId { get; init; }

    /// <summary>The device; empty for the node's own.</summary>
    public required string Device { get; init; }

    public required string Name { get; init; }

    /// <summary>The number that stands for the name until the next birth; null for none.</summary>
    public long? Alias { get; set; }

    /// <summary>Its data type by the specification's numbers.</summary>
    public int DataType { get; set; }

    /// <summary>Its newest value, as JSON; empty while it has none.</summary>
    public string Value { get; set; } = "";

    public DateTimeOffset At { get; set; }

    /// <summary>Whether its node or device died since: then nobody knows whether the value still holds.</summary>
    public bool IsStale { get; set; }

    /// <summary>The chain that a mapping led its values to last; null for none.</summary>
    public int? ChainId { get; set; }
}
