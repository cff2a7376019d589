namespace WearWatch.Plant.Webhooks;

/// <summary>What became of a try to deliver an event.</summary>
public abstract record DeliveryOutcome
{
    private DeliveryOutcome()
    {
    }

    /// <summary>The address leads where nothing is sent.</summary>
    public static DeliveryOutcome Closed { get; } = new Failed(Status: null, WebhookHosts.NotAllowed, NotBefore: null);

    /// <summary>An answer came.</summary>
    /// <param name="status">Its status of HTTP.</param>
    /// <param name="notBefore">How long the receiver asks to be left alone; null when it does not.</param>
    public static DeliveryOutcome Answered(int status, TimeSpan? notBefore) => status switch
    {
        >= 200 and < 300 => new Taken(status),
        410 => new Unwanted(status),
        >= 300 and < 400 => new Failed(status, $"The receiver answered {status}. Redirects are not followed.", notBefore),
        _ => new Failed(status, $"The receiver answered {status}.", notBefore),
    };

    /// <summary>No answer came in time.</summary>
    /// <param name="seconds">How long was waited.</param>
    public static DeliveryOutcome Unanswered(int seconds) =>
        new Failed(Status: null, $"No answer came within {seconds} seconds.", NotBefore: null);

    /// <summary>There was no way to the receiver.</summary>
    /// <param name="why">What the system says.</param>
    public static DeliveryOutcome Unreached(string why) =>
        new Failed(Status: null, $"The receiver was not reached: {why}", NotBefore: null);

    /// <summary>The receiver has it (RFC 9110, 15.3).</summary>
    /// <param name="Status">The status of HTTP.</param>
    public sealed record Taken(int Status) : DeliveryOutcome;

    /// <summary>The receiver wants no more (RFC 9110, 15.5.11).</summary>
    /// <param name="Status">The status of HTTP.</param>
    public sealed record Unwanted(int Status) : DeliveryOutcome;

    /// <summary>It is to be tried again.</summary>
    /// <param name="Status">The status of HTTP; null without an answer.</param>
    /// <param name="Why">What went wrong.</param>
    /// <param name="NotBefore">How long the receiver asks to be left alone (RFC 9110, 10.2.3); null when it does not.</param>
    public sealed record Failed(int? Status, Phrase Why, TimeSpan? NotBefore) : DeliveryOutcome;
}
