namespace WearWatch.Dashboard.Api.Wire;

/// <summary>Something that asks for a person's attention.</summary>
internal sealed record NoticeJson(
    long Id, string Chain, string Line, string Kind, bool Urgent, string Why, string WhatToDo, DateTimeOffset RaisedAt,
    DateTimeOffset? EndedAt,
    bool? JudgedReal, string JudgedBy);
