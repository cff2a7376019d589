using WearWatch.Phrases;

namespace WearWatch.Storage.Rows;

/// <summary>Where an event stands on its way to an address.</summary>
public enum WebhookState
{
    Waiting = 0,

    Delivered = 1,

    /// <summary>Its time was over before the receiver took it.</summary>
    GivenUp = 2,
}

/// <summary>An event on its way to an address. It waits here until the receiver has it.</summary>
public sealed class WebhookDeliveryRow
{
    public long Id { get; init; }

    public int AddressId { get; init; }

    /// <summary>The event's own id: the same however often it is sent, by which a receiver knows it again.</summary>
    public required string EventId { get; init; }

    public WebhookEventKind Kind { get; init; }

    /// <summary>The chain or the shutdown that it is about.</summary>
    public required string Subject { get; init; }

    /// <summary>What is sent, byte by byte.</summary>
    public required string Body { get; init; }

    public DateTimeOffset WrittenAt { get; init; }

    /// <summary>From when its time counts: when it was written, or last sent again by a person.</summary>
    public DateTimeOffset WaitsSince { get; set; }

    public WebhookState State { get; set; }

    /// <summary>When the receiver took it, or it was given up; null while it waits.</summary>
    public DateTimeOffset? EndedAt { get; set; }

    public int Tries { get; set; }

    /// <summary>The status of HTTP by which the receiver answered last; null while it never did.</summary>
    public int? Status { get; set; }

    /// <summary>Why the last try failed; nothing when it did not.</summary>
    public Phrase Fault { get; set; } = Phrase.None;
}
