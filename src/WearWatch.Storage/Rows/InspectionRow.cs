using WearWatch.Inspections;

namespace WearWatch.Storage.Rows;

/// <summary>One look at a chain as it was told. Rows are only ever added.</summary>
public sealed class InspectionRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Given by whoever sends it: sent twice, it is stored once.</summary>
    public required string Key { get; init; }

    public DateTimeOffset TakenAt { get; init; }

    /// <summary>Each point that was looked at, with what was found.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    public string ToldBy { get; init; } = "";

    public DateTimeOffset ReceivedAt { get; init; }

    /// <summary>The look as the domain knows it.</summary>
    public Inspection ToInspection() => new(TakenAt, Findings);
}
