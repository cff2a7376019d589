namespace WearWatch.Storage.Rows;

/// <summary>What was done about a notice.</summary>
public enum NoticeStepKind
{
    /// <summary>A person has seen it and deals with it.</summary>
    Acknowledged,

    /// <summary>It was given to a person, or to nobody.</summary>
    Assigned,

    /// <summary>It was put off until a date.</summary>
    Snoozed,

    /// <summary>A person wrote something beside it.</summary>
    Commented,

    /// <summary>A person let it ask again.</summary>
    Woken,

    /// <summary>It became urgent and asks again, whatever was said before.</summary>
    Worsened,
}

/// <summary>A step of a notice. Rows are only ever added.</summary>
public sealed class NoticeStepRow
{
    public long Id { get; init; }

    public long NoticeId { get; init; }

    /// <summary>Given by whoever sends it: sent twice, it is stored once. Null for a step of the program itself.</summary>
    public string? Key { get; init; }

    public NoticeStepKind Kind { get; init; }

    public DateTimeOffset At { get; init; }

    /// <summary>Who; empty for the program itself.</summary>
    public string By { get; init; } = "";

    /// <summary>To whom it was given; empty for nobody.</summary>
    public string Person { get; init; } = "";

    /// <summary>Until which day of the plant it was put off.</summary>
    public DateOnly? Until { get; init; }

    public string Comment { get; init; } = "";
}
