namespace WearWatch.Storage.Rows;

/// <summary>Where a chain stands in the order in which the plant is walked, as a person has set it.</summary>
public sealed class WalkRow
{
    public int Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Counts through the whole plant.</summary>
    public int Place { get; set; }
}
