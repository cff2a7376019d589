using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.Notices;

/// <summary>A notice in the list.</summary>
public sealed record NoticeLine(
    long Id, int ChainId, string Chain, string Line, NoticeKind Kind, bool Urgent, string Why, string WhatToDo,
    DateTimeOffset RaisedAt, DateTimeOffset? EndedAt, bool? JudgedReal, string JudgedBy);
