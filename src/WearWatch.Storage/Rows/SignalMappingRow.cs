using WearWatch.Signals;

namespace WearWatch.Storage.Rows;

/// <summary>
/// How a foreign signal is read, as one version of its mapping. Rows are only ever added: the highest version of a name holds.
/// </summary>
public sealed class SignalMappingRow
{
    public int Id { get; init; }

    /// <summary>The mapping's name, the same over its versions.</summary>
    public required string Name { get; init; }

    /// <summary>1 for the first.</summary>
    public int Version { get; init; }

    public SignalSource Source { get; init; }

    /// <summary>
    /// Levels with <c>+</c>, <c>#</c> and captures such as <c>{machine}</c>: of an MQTT topic, or group, node and device of
    /// Sparkplug.
    /// </summary>
    public required string Topic { get; init; }

    /// <summary>JSONPath of the value (RFC 9535), or the metric's name.</summary>
    public required string ValuePath { get; init; }

    public TimeNotation TimeForm { get; init; }

    /// <summary>JSONPath of the time; empty where the arrival counts.</summary>
    public string TimePath { get; init; } = "";

    /// <summary>JSONPath of the value's unit; empty where it tells none.</summary>
    public string UnitPath { get; init; } = "";

    public TelemetryKind Kind { get; init; }

    /// <summary>The value is taken times this.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>And this is added.</summary>
    public double Offset { get; init; }

    /// <summary>The chain's name, in which captures may stand, such as <c>K-{machine}</c>.</summary>
    public required string Chain { get; init; }

    /// <summary>Where the name so found is looked up; empty where it is the chain's own.</summary>
    public IReadOnlyList<ChainWord> Words { get; init; } = [];

    /// <summary>Whether it reads; a mapping that does not is kept.</summary>
    public bool IsActive { get; init; } = true;

    public DateTimeOffset SavedAt { get; init; }

    public required string SavedBy { get; init; }
}
