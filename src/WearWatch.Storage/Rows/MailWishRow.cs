using WearWatch.Wear;

namespace WearWatch.Storage.Rows;

/// <summary>Which notices a person wants by mail, and when.</summary>
public sealed class MailWishRow
{
    public int PersonId { get; init; }

    /// <summary>Such as <c>ina@example.org</c>; empty while none was given.</summary>
    public string Address { get; set; } = "";

    public MailRhythm Rhythm { get; set; }

    /// <summary>Only chains of these lines; empty for all.</summary>
    public IReadOnlyList<string> Lines { get; set; } = [];

    /// <summary>Only notices about these; empty for all.</summary>
    public IReadOnlyList<NoticeKind> Kinds { get; set; } = [];

    /// <summary>The plant's time of day from which the day's mail is written.</summary>
    public TimeOnly DailyAt { get; set; } = new(6, 0);

    /// <summary>The plant's time of day from which only urgent notices come by themselves; null for no quiet hours.</summary>
    public TimeOnly? QuietFrom { get; set; }

    /// <summary>The end of the quiet hours.</summary>
    public TimeOnly? QuietTo { get; set; }

    /// <summary>When the person last chose: what was raised before is not mailed one by one.</summary>
    public DateTimeOffset Since { get; set; }
}
