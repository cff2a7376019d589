using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>A coming shutdown with the decisions that put swaps into it.</summary>
/// <param name="WindowId">Which shutdown.</param>
/// <param name="Line">The line that stands still.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it is over.</param>
/// <param name="SwapOf">The decisions, by chain; none when all were called off.</param>
internal sealed record PlannedStop(
    string WindowId, string Line, DateTimeOffset Start, DateTimeOffset End, IReadOnlyDictionary<int, long> SwapOf)
{
    /// <summary>The decisions in their order.</summary>
    public IReadOnlyList<long> Swaps => [.. SwapOf.Values.Order()];

    /// <summary>What is remembered of it once it was said.</summary>
    public WebhookStopRow Said() =>
        new() { WindowId = WindowId, Line = Line, Start = Start, End = End, Swaps = Swaps };
}
