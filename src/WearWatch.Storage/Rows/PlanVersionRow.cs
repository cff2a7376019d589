namespace WearWatch.Storage.Rows;

/// <summary>A plan that was put aside under a name. It stays as it was; only its approval is added.</summary>
public sealed class PlanVersionRow
{
    public long Id { get; init; }

    public required string Name { get; init; }

    public required string SavedBy { get; init; }

    public DateTimeOffset SavedAt { get; init; }

    /// <summary>What it was expected to cost when it was put aside.</summary>
    public double Cost { get; init; }

    /// <summary>Where its swaps stand.</summary>
    public IReadOnlyList<VersionSwap> Swaps { get; init; } = [];

    /// <summary>Who approved it; empty while nobody has.</summary>
    public string ApprovedBy { get; set; } = "";

    public DateTimeOffset? ApprovedAt { get; set; }
}

/// <summary>A swap of a plan that was put aside.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="WindowId">The shutdown; null when it waits for the time after the horizon.</param>
/// <param name="Start">When the shutdown begins.</param>
/// <param name="Placing">How it came to stand there.</param>
/// <param name="Hours">How long the swap takes by the plan.</param>
public sealed record VersionSwap(string Chain, string? WindowId, DateTimeOffset? Start, SwapPlacing Placing, double Hours);
