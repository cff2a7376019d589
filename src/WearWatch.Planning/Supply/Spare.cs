namespace WearWatch.Planning.Supply;

/// <summary>A part in the store: what is there, what is to come, and how it can be had.</summary>
public sealed record Spare
{
    /// <summary>The lead time taken where a plant has none on record. An assumption.</summary>
    public static readonly TimeSpan UsualLeadTime = TimeSpan.FromDays(28);

    /// <summary>The part.</summary>
    public required Part Part { get; init; }

    /// <summary>How much is on the shelf.</summary>
    public int InStock { get; init => field = NotNegative(value); }

    /// <summary>What is on order.</summary>
    public IReadOnlyList<Delivery> OnOrder { get; init; } = [];

    /// <summary>From order to arrival.</summary>
    public TimeSpan LeadTime { get; init; } = UsualLeadTime;

    /// <summary>From order to arrival when it must come with haste; never longer than the ordinary lead time.</summary>
    public TimeSpan ExpressLeadTime { get => field < LeadTime ? field : LeadTime; init; }

    /// <summary>How much a pack holds; orders are for whole packs.</summary>
    public int PackSize
    {
        get;
        init => field = value > 0
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A pack size is at least one.");
    } = 1;

    /// <summary>The price of one unit.</summary>
    public double Price
    {
        get;
        init => field = value is >= 0 and <= 1e9
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A price is not negative.");
    }

    /// <summary>What is there at a moment when nothing more is ordered.</summary>
    public int AvailableAt(DateTimeOffset moment) => InStock + OnOrder.Where(d => d.Due <= moment).Sum(d => d.Quantity);

    /// <summary>Whole packs for at least so much.</summary>
    public int InPacks(int quantity) => (quantity + PackSize - 1) / PackSize * PackSize;

    private static int NotNegative(int value) =>
        value >= 0 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A stock is not negative.");
}
