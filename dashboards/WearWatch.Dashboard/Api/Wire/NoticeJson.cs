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
}
