using WearWatch.Wear;

namespace WearWatch.Storage.Rows;

/// <summary>A notice from its raising to its end. At most one of a kind is open for a chain.</summary>
public sealed class NoticeRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    public NoticeKind Kind { get; init; }

    public bool Urgent { get; set; }

    public required string Why { get; set; }

    public required string WhatToDo { get; set; }

    public DateTimeOffset RaisedAt { get; init; }

    /// <summary>When its cause was gone or a person closed it; null while it is open.</summary>
    public DateTimeOffset? EndedAt { get; set; }

    /// <summary>A person's judgement: true for a real cause, false for a false alarm, null while nobody judged.</summary>
    public bool? JudgedReal { get; set; }

    public string JudgedBy { get; set; } = "";
}
