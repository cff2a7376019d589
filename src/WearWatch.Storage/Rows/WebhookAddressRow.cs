using WearWatch.Phrases;

namespace WearWatch.Storage.Rows;

/// <summary>An address that an administrator has allowed webhooks to.</summary>
public sealed class WebhookAddressRow
{
    public int Id { get; init; }

    public required string Name { get; set; }

    /// <summary>Such as <c>https://orders.example.org/hooks/wear</c>.</summary>
    public required string Url { get; set; }

    /// <summary>Only these; empty for all.</summary>
    public IReadOnlyList<WebhookEventKind> Kinds { get; set; } = [];

    /// <summary>Only about chains of these lines; empty for all.</summary>
    public IReadOnlyList<string> Lines { get; set; } = [];

    /// <summary>What its events are signed with. It has to be readable here, as every signature is made from it.</summary>
    public required string Secret { get; set; }

    /// <summary>The secret before; signs beside the new one until its time is over.</summary>
    public string FormerSecret { get; set; } = "";

    public DateTimeOffset? FormerUntil { get; set; }

    /// <summary>Whether nothing is sent for now. What happens meanwhile waits.</summary>
    public bool IsPaused { get; set; }

    /// <summary>Why the program paused it by itself; nothing when a person did.</summary>
    public Phrase PausedFor { get; set; } = Phrase.None;

    /// <summary>Before this moment nobody sends there: it failed a short time ago, or somebody is sending.</summary>
    public DateTimeOffset NextTryAt { get; set; }

    /// <summary>How many tries in a row have failed.</summary>
    public int Failures { get; set; }

    public required string AddedBy { get; init; }

    public DateTimeOffset AddedAt { get; init; }
}
