namespace WearWatch.Storage.Rows;

/// <summary>A part in the store.</summary>
public sealed class SpareRow
{
    /// <summary>Days an express order takes where a plant has no figure of its own. An assumption.</summary>
    public const int UsualExpressLeadDays = 5;

    public int Id { get; init; }

    /// <summary>Chain, ConnectingLink, OffsetLink or Sprocket.</summary>
    public required string Kind { get; init; }

    /// <summary>The chain type, with the teeth for a sprocket.</summary>
    public required string Designation { get; init; }

    /// <summary>Pitches of chain, pieces of all else.</summary>
    public int InStock { get; set; }

    public int LeadDays { get; set; }

    /// <summary>Days from order to arrival when it must come with haste.</summary>
    public int ExpressLeadDays { get; set; } = UsualExpressLeadDays;

    public int PackSize { get; set; } = 1;

    public double Price { get; set; }

    /// <summary>From whom it is usually had; empty for not known.</summary>
    public string Supplier { get; set; } = "";

    /// <summary>What is on order.</summary>
    public IReadOnlyList<SpareDelivery> OnOrder { get; set; } = [];
}

/// <summary>What is to come.</summary>
/// <param name="Due">The day on which it is to arrive.</param>
/// <param name="Quantity">How much.</param>
public sealed record SpareDelivery(DateOnly Due, int Quantity);
