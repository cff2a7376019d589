namespace WearWatch.Storage.Rows;

/// <summary>How an open notice stood when a webhook last said so; gone once its end was said.</summary>
public sealed class WebhookNoticeRow
{
    public long NoticeId { get; init; }

    public bool Urgent { get; set; }

    public bool Acknowledged { get; set; }

    public DateTimeOffset? SnoozedUntil { get; set; }

    public string AssignedTo { get; set; } = "";
}
