using WearWatch.Phrases;

namespace WearWatch.Storage.Rows;

/// <summary>What another system reported of the work order of a planned swap, as it was told. Rows are only ever added.</summary>
public sealed class WorkOrderReportRow
{
    public long Id { get; init; }

    /// <summary>Given by whoever sends it, or made from its content: the same report sent twice is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>Who made the key.</summary>
    public KeyOwner KeyOwner { get; init; }

    /// <summary>A hash of what was told.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>The id of the swap as it was told, such as <c>swap-12</c>.</summary>
    public required string Swap { get; init; }

    /// <summary>The swap for which it counts; null while none is known by that id.</summary>
    public long? SwapId { get; set; }

    /// <summary>The number of the work order; empty where none was told.</summary>
    public string Number { get; init; } = "";

    public WorkOrderState State { get; init; }

    /// <summary>When the swap was done; told with that state only.</summary>
    public DateTimeOffset? DoneAt { get; init; }

    public double? HoursWorked { get; init; }

    /// <summary>What was used; null where nothing was said of it.</summary>
    public IReadOnlyList<MaterialUsed>? Material { get; init; }

    public string Note { get; init; } = "";

    public string ToldBy { get; init; } = "";

    public DateTimeOffset ReceivedAt { get; init; }

    public WorkOrderStanding Standing { get; set; }

    /// <summary>What it contradicts; nothing for one that does not.</summary>
    public Phrase Conflict { get; set; } = Phrase.None;

    public string SettledBy { get; set; } = "";

    /// <summary>When a person settled the conflict.</summary>
    public DateTimeOffset? SettledAt { get; set; }
}

/// <summary>A part that was used, as it was told.</summary>
/// <param name="Part">The part as the work package calls it, such as <c>16B-1 chain</c>, or its number in the store.</param>
/// <param name="Quantity">How much of it: pitches of chain, pieces of all else.</param>
public sealed record MaterialUsed(string Part, int Quantity);
