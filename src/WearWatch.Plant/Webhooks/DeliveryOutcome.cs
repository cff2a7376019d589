namespace WearWatch.Plant.Webhooks;

/// <summary>What became of a try to deliver an event.</summary>
public abstract record DeliveryOutcome
{
    private DeliveryOutcome()
    {
    }

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
