using WearWatch.Plant.Files;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>What a webhook says of a notice. No person is named.</summary>
public sealed record NoticeEventJson
{
    /// <summary>The notice's number; the same as in the API.</summary>
    public required long Notice { get; init; }

    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>Its line.</summary>
    public required string Line { get; init; }

    /// <summary>Its position.</summary>
    public required string Position { get; init; }

    /// <summary>What it is about, such as <c>limit_near</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Whether it is urgent.</summary>
    public required bool Urgent { get; init; }

    /// <summary>Why it was raised, in English.</summary>
    public required string Why { get; init; }

    /// <summary>What to do, in English.</summary>
    public required string WhatToDo { get; init; }

    /// <summary>When it was raised.</summary>
    public required DateTimeOffset RaisedAt { get; init; }

    /// <summary>When it ended; null while it is open.</summary>
    public required DateTimeOffset? EndedAt { get; init; }

    /// <summary>Whether a person has acknowledged it.</summary>
    public required bool Acknowledged { get; init; }

    /// <summary>Whether somebody deals with it.</summary>
    public required bool Assigned { get; init; }

    /// <summary>Until when it is put off; null when nobody has put it off.</summary>
    public required DateTimeOffset? SnoozedUntil { get; init; }

    /// <summary>What no figure says of a chain that lifts or holds a load; null for any other.</summary>
    public required string? Caution { get; init; }

    /// <summary>A notice of a chain as it stands.</summary>
    internal static NoticeEventJson Of(NoticeRow notice, ChainRow chain) => new()
    {
        Notice = notice.Id,
        Chain = chain.Name,
        Line = chain.Line,
        Position = chain.Position,
        Kind = FileWords.Of(notice.Kind),
        Urgent = notice.Urgent,
        Why = notice.Why.ToString(),
        WhatToDo = notice.WhatToDo.ToString(),
        RaisedAt = notice.RaisedAt,
        EndedAt = notice.EndedAt,
        Acknowledged = notice.Acknowledged,
        Assigned = notice.AssignedTo.Length > 0,
        SnoozedUntil = notice.SnoozedUntil,
        Caution = CautionOf(chain),
    };

    /// <summary>What goes with every word on a chain that lifts.</summary>
    internal static string? CautionOf(ChainRow chain) =>
        chain.HoldsLoad ? Chains.Caution.LiftingInBrief.ToString() : null;
}
