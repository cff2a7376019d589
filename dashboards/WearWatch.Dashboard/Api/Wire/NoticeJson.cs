namespace WearWatch.Dashboard.Api.Wire;

/// <summary>Something that asks for a person's attention.</summary>
internal sealed record NoticeJson
{
    public required long Id { get; init; }

    public required string Chain { get; init; }

    public required string Line { get; init; }

    public required string Kind { get; init; }

    public required bool Urgent { get; init; }

    public required string Why { get; init; }

    public required string WhatToDo { get; init; }

    public required DateTimeOffset RaisedAt { get; init; }

    public required DateTimeOffset? EndedAt { get; init; }

    /// <summary>When the shutdown begins in which the chain's swap is planned; null when none is.</summary>
    public required DateTimeOffset? PlannedSwap { get; init; }

    public required bool? JudgedReal { get; init; }

    public required string JudgedBy { get; init; }

    /// <summary>How it stands: <c>asks</c>, <c>acknowledged</c>, <c>snoozed</c> or <c>planned</c>.</summary>
    public required string Standing { get; init; }

    /// <summary>Until when it is put off; null when nobody has put it off.</summary>
    public required DateTimeOffset? SnoozedUntil { get; init; }

    /// <summary>Who deals with it; empty for nobody.</summary>
    public required string AssignedTo { get; init; }

    /// <summary>What was done about it, from the first.</summary>
    public required IReadOnlyList<NoticeStepJson> Steps { get; init; }
}
