using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Storage.Rows;

/// <summary>A notice from its raising to its end. At most one of a kind is open for a chain.</summary>
public sealed class NoticeRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    public NoticeKind Kind { get; init; }

    public bool Urgent { get; set; }

    public required Phrase Why { get; set; }

    public required Phrase WhatToDo { get; set; }

    public DateTimeOffset RaisedAt { get; init; }

    /// <summary>When its cause was gone or a person closed it; null while it is open.</summary>
    public DateTimeOffset? EndedAt { get; set; }

    /// <summary>A person's judgement: true for a real cause, false for a false alarm, null while nobody judged.</summary>
    public bool? JudgedReal { get; set; }

    public string JudgedBy { get; set; } = "";

    /// <summary>Whether a person has acknowledged it, as severe as it is.</summary>
    public bool Acknowledged { get; set; }

    /// <summary>Until when a person has put it off; null when nobody has.</summary>
    public DateTimeOffset? SnoozedUntil { get; set; }

    /// <summary>Who deals with it; empty for nobody.</summary>
    public string AssignedTo { get; set; } = "";

    /// <summary>Whether a person's word keeps it from asking.</summary>
    public bool IsQuiet(DateTimeOffset now) => Acknowledged || SnoozedUntil > now;
}
