using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Files;

/// <summary>What another system says of the work order of a planned swap; nothing of it is checked yet.</summary>
public sealed record WorkOrderAsWritten
{
    /// <summary>The id under which the swap went out, such as <c>swap-12</c>.</summary>
    public required string Swap { get; init; }

    /// <summary>The number of the work order there; empty where it is not told.</summary>
    public string Number { get; init; } = "";

    /// <summary>How far it is.</summary>
    public required WorkOrderState State { get; init; }

    /// <summary>When the swap was done.</summary>
    public DateTimeOffset? DoneAt { get; init; }

    /// <summary>How long it took, h.</summary>
    public double? HoursWorked { get; init; }

    /// <summary>What was used; null where nothing is said of it, empty for nothing.</summary>
    public IReadOnlyList<MaterialUsed>? Material { get; init; }

    /// <summary>What else there is to say.</summary>
    public string Note { get; init; } = "";
}
