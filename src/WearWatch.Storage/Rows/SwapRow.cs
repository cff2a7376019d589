namespace WearWatch.Storage.Rows;

/// <summary>How a swap came to stand where it does.</summary>
public enum SwapPlacing
{
    /// <summary>The planner proposed it; it may be moved by the next proposal.</summary>
    Proposed,

    /// <summary>A person placed it; proposals leave it there.</summary>
    ByHand,

    /// <summary>A person locked it; neither proposals nor hands move it.</summary>
    Locked,
}

/// <summary>What became of a planned swap.</summary>
public enum SwapEnd
{
    /// <summary>It is planned.</summary>
    Planned,

    /// <summary>Another decision took its place.</summary>
    Replaced,

    /// <summary>It was done.</summary>
    Done,

    /// <summary>It was not done; the next plan starts from there.</summary>
    NotDone,
}

/// <summary>
/// A decision on when a chain is swapped. A new decision is a new row; the old one keeps its place in the history.
/// </summary>
public sealed class SwapRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>The window's id, or null when a person keeps the chain out of the plan.</summary>
    public string? WindowId { get; init; }

    public DateTimeOffset? Start { get; init; }

    public DateTimeOffset? End { get; init; }

    public SwapPlacing Placing { get; init; }

    /// <summary>Why, in a person's words.</summary>
    public string Note { get; init; } = "";

    public string DecidedBy { get; init; } = "";

    public DateTimeOffset DecidedAt { get; init; }

    public SwapEnd Outcome { get; set; }

    /// <summary>Why it was not done, or what else is to be said of it.</summary>
    public string OutcomeNote { get; set; } = "";

    public string OutcomeBy { get; set; } = "";

    public DateTimeOffset? OutcomeAt { get; set; }

    /// <summary>How long the swap was to take when it was decided; null for what was decided before that was kept.</summary>
    public double? PlannedHours { get; init; }

    /// <summary>How long it took.</summary>
    public double? HoursWorked { get; set; }

    /// <summary>Who did it.</summary>
    public string DoneBy { get; set; } = "";

    /// <summary>What it took from the stock.</summary>
    public IReadOnlyList<PartTaken> PartsTaken { get; set; } = [];

    /// <summary>How often its report was taken back.</summary>
    public int Undone { get; set; }
}

/// <summary>What a swap took from the stock.</summary>
/// <param name="Kind">Chain, ConnectingLink, OffsetLink or Sprocket.</param>
/// <param name="Designation">The chain type, with the teeth for a sprocket.</param>
/// <param name="Quantity">How much, in the part's own unit.</param>
public sealed record PartTaken(string Kind, string Designation, int Quantity);
