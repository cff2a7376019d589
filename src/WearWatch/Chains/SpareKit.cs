namespace WearWatch.Chains;

/// <summary>What is laid out for a chain's next swap besides its pitches and links.</summary>
/// <param name="Attachments">The attachments and their pattern, such as <c>K1 every 4th pitch, both sides</c>; or empty.</param>
/// <param name="StoreNumber">The number under which the store keeps the chain; or empty.</param>
/// <param name="SprocketNumber">The number of its sprockets, the store's or the maker's; or empty.</param>
public sealed record SpareKit(string Attachments, string StoreNumber, string SprocketNumber = "")
{
    /// <summary>Nothing is on record.</summary>
    public static SpareKit None { get; } = new("", "");

    /// <summary>What of it goes with the sprockets, or with the chain.</summary>
    /// <param name="sprockets">Whether the sprockets are asked for.</param>
    public SpareKit For(bool sprockets) =>
        sprockets ? None with { SprocketNumber = SprocketNumber } : this with { SprocketNumber = "" };
}
