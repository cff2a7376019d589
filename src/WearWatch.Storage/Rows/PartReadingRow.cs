using WearWatch.Chains.Parts;
using WearWatch.Parts;
using WearWatch.Running;

namespace WearWatch.Storage.Rows;

/// <summary>
/// What was measured of one part of a chain or its wheels, as it was told. Rows are only ever added: a withdrawal is a new row
/// that names the one it takes out of use.
/// </summary>
public sealed class PartReadingRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Given by whoever sends it, or made from its content: the same reading sent twice is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>Who made the key.</summary>
    public KeyOwner KeyOwner { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterH { get; init; }

    public WearPart Part { get; init; }

    public string Place { get; init; } = "";

    public double Mm { get; init; }

    /// <summary>Its size when new, where it was told with the reading.</summary>
    public double? NewMm { get; init; }

    /// <summary>The plant's own limit, where it was told with the reading.</summary>
    public double? LimitMm { get; init; }

    /// <summary>Who says so, or empty.</summary>
    public string LimitSource { get; init; } = "";

    /// <summary>The reading as it was written, with its unit.</summary>
    public string Written { get; init; } = "";

    /// <summary>The reading that this one withdraws, or null.</summary>
    public long? CorrectsId { get; init; }

    /// <summary>Set on a row that withdraws a reading.</summary>
    public bool Withdraws { get; init; }

    /// <summary>Why it was withdrawn, or empty.</summary>
    public string Note { get; init; } = "";

    public string ToldBy { get; init; } = "";

    public DateTimeOffset ReceivedAt { get; init; }

    /// <summary>The reading as the domain knows it.</summary>
    public PartReading ToReading() => new()
    {
        Part = Part,
        Mm = Mm,
        TakenAt = TakenAt,
        Counter = CounterH is { } h ? new RunningHours(h) : null,
        Place = Place,
        Told = new PartTold(NewMm, LimitMm, LimitSource),
    };
}
