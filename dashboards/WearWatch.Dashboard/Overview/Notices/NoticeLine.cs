using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.Notices;

/// <summary>A notice in the list.</summary>
public sealed record NoticeLine
{
    public required long Id { get; init; }

    public required int ChainId { get; init; }

    public required string Chain { get; init; }

    public required string Line { get; init; }

    public required NoticeKind Kind { get; init; }

    public required bool Urgent { get; init; }

    public required string Why { get; init; }

    public required string WhatToDo { get; init; }

    public required DateTimeOffset RaisedAt { get; init; }

    public required DateTimeOffset? EndedAt { get; init; }

    public required bool? JudgedReal { get; init; }

    public required string JudgedBy { get; init; }
}
