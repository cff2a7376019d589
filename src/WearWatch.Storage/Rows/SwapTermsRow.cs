namespace WearWatch.Storage.Rows;

/// <summary>What a swap of a chain takes, where it is not what its family and length say.</summary>
public sealed class SwapTermsRow
{
    public int Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Chains of a line with the same group are swapped together; empty for none.</summary>
    public string ParallelGroup { get; set; } = "";

    public double? Hours { get; set; }

    public int? People { get; set; }

    /// <summary>The drive's sprockets are replaced with the chain.</summary>
    public bool WithSprockets { get; set; }
}
