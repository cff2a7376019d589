namespace WearWatch.Storage.Rows;

/// <summary>Which swaps a coming shutdown had when a webhook last said so; gone once it has begun or has none.</summary>
public sealed class WebhookStopRow
{
    public required string WindowId { get; init; }

    public required string Line { get; init; }

    public DateTimeOffset Start { get; init; }

    public DateTimeOffset End { get; init; }

    /// <summary>The decisions, by the ids of their rows.</summary>
    public IReadOnlyList<long> Swaps { get; set; } = [];
}
