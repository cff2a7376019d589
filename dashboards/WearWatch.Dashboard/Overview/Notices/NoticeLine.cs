using WearWatch.Storage;
using WearWatch.Storage.Rows;
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

    /// <summary>The lines of some notices.</summary>
    /// <param name="db">The plant's memory.</param>
    /// <param name="notices">The notices.</param>
    public static IQueryable<NoticeLine> Of(WearDb db, IQueryable<NoticeRow> notices) =>
        from notice in notices
        join chain in db.Chains on notice.ChainId equals chain.Id
        select new NoticeLine
        {
            Id = notice.Id,
            ChainId = notice.ChainId,
            Chain = chain.Name,
            Line = chain.Line,
            Kind = notice.Kind,
            Urgent = notice.Urgent,
            Why = notice.Why,
            WhatToDo = notice.WhatToDo,
            RaisedAt = notice.RaisedAt,
            EndedAt = notice.EndedAt,
            JudgedReal = notice.JudgedReal,
            JudgedBy = notice.JudgedBy,
        };
}
