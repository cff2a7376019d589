using WearWatch.Chains.Families;

namespace WearWatch.Storage.Rows;

/// <summary>How long the swaps of a chain family take in this plant, and how many people they need.</summary>
public sealed class SwapWorkRow
{
    public int Id { get; init; }

    public required ChainFamily Family { get; init; }

    /// <summary>Hours for the first pitches.</summary>
    public double Hours { get; set; }

    /// <summary>Hours more for each 100 pitches.</summary>
    public double HoursPer100Pitches { get; set; }

    public int People { get; set; } = 1;
}
