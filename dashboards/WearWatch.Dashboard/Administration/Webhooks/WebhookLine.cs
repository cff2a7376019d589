using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Webhooks;

/// <summary>An address of the list. It has no secret, and of the address the host alone: a path may be as good as one.</summary>
public sealed record WebhookLine
{
    public required int Id { get; init; }

    public required string Name { get; init; }

    public required string Host { get; init; }

    public required IReadOnlyList<WebhookEventKind> Kinds { get; init; }

    public required bool IsPaused { get; init; }

    public required Phrase PausedFor { get; init; }

    /// <summary>How many tries in a row have failed.</summary>
    public required int Failures { get; init; }

    /// <summary>How many events wait.</summary>
    public required int Waiting { get; init; }

    /// <summary>When an event was last delivered; null for never.</summary>
    public required DateTimeOffset? DeliveredAt { get; init; }
}
