namespace WearWatch.Planning.Plans;

/// <summary>Why a swap stands where it does: what it costs there, and what would change one shutdown earlier or later.</summary>
public sealed record SwapReason
{
    /// <summary>The place where it stands, with its own cost and risks.</summary>
    public required SwapMove Here { get; init; }

    /// <summary>The shutdown before; null when its line has none.</summary>
    public required SwapNeighbour? Earlier { get; init; }

    /// <summary>The shutdown after it, or beyond the horizon; null for a chain that stands there already.</summary>
    public required SwapNeighbour? Later { get; init; }

    /// <summary>
    /// The moment after which the chain must not be used and before which no later shutdown begins; null when it may wait.
    /// </summary>
    public required DateTimeOffset? NotAfter { get; init; }
}
