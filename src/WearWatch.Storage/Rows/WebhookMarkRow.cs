namespace WearWatch.Storage.Rows;

/// <summary>How far was looked for what webhooks have to say.</summary>
/// <remarks>Ids grow in the order of commits, so that nothing new comes before it.</remarks>
public sealed class WebhookMarkRow
{
    public int Id { get; init; }

    /// <summary>The last notice that was looked at.</summary>
    public long NoticeId { get; set; }

    /// <summary>The last event of a chain that was looked at.</summary>
    public long EventId { get; set; }
}
