namespace WearWatch.Storage.Rows;

/// <summary>How far an order has come. What is only proposed follows from the plan, and is not kept.</summary>
public enum PurchaseState
{
    /// <summary>It was sent to the supplier.</summary>
    Ordered,

    /// <summary>The supplier has confirmed it, with a date.</summary>
    Confirmed,

    /// <summary>It has come, and lies in the stock.</summary>
    Received,

    /// <summary>It does not come.</summary>
    Cancelled,
}

/// <summary>A part that was ordered.</summary>
public sealed class PurchaseRow
{
    public long Id { get; init; }

    /// <summary>Chain, ConnectingLink, OffsetLink or Sprocket.</summary>
    public required string Kind { get; init; }

    /// <summary>The chain type, with the teeth for a sprocket.</summary>
    public required string Designation { get; init; }

    /// <summary>Pitches of chain, pieces of all else.</summary>
    public int Quantity { get; set; }

    public string Supplier { get; set; } = "";

    /// <summary>The price of one unit.</summary>
    public double Price { get; set; }

    /// <summary>Whether it comes with haste.</summary>
    public bool IsExpress { get; set; }

    public PurchaseState State { get; set; }

    /// <summary>The day on which it is expected; as the supplier has confirmed it, once he has.</summary>
    public DateOnly ExpectedOn { get; set; }

    /// <summary>What came; it may be less or more than what was ordered.</summary>
    public int ReceivedQuantity { get; set; }

    /// <summary>Its steps, from the first.</summary>
    public IReadOnlyList<PurchaseStep> Steps { get; set; } = [];

    /// <summary>Whether it is still to come.</summary>
    public bool IsOpen => State is PurchaseState.Ordered or PurchaseState.Confirmed;
}

/// <summary>A step of an order.</summary>
/// <param name="State">What it became.</param>
/// <param name="At">When.</param>
/// <param name="By">Who entered it.</param>
/// <param name="Note">What else was said; of a date that moved, from when to when.</param>
public sealed record PurchaseStep(PurchaseState State, DateTimeOffset At, string By, string Note);
