namespace WearWatch.Storage.Rows;

/// <summary>A notice that a person has in a mail: once, and once more when it became urgent.</summary>
public sealed class MailedNoticeRow
{
    public int PersonId { get; init; }

    public long NoticeId { get; init; }

    public bool Urgent { get; init; }
}
