using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Webhooks;

/// <summary>An event on its way to an address, or at its end.</summary>
public sealed record WebhookLogLine
{
    public required long Id { get; init; }

    public required string Address { get; init; }

    public required WebhookEventKind Kind { get; init; }

    public required string Subject { get; init; }

    public required DateTimeOffset WrittenAt { get; init; }

    public required WebhookState State { get; init; }

    public required int Tries { get; init; }

    /// <summary>When its receiver took it, or it was given up.</summary>
    public required DateTimeOffset? EndedAt { get; init; }

    /// <summary>Why the last try failed; nothing when it did not.</summary>
    public required Phrase Fault { get; init; }
}
