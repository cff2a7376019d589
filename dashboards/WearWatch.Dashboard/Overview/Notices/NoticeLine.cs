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

    /// <summary>Whether the chain lifts or holds a load.</summary>
    public required bool HoldsLoad { get; init; }

    /// <summary>When the shutdown begins in which the chain's swap is planned; null when none is.</summary>
    public required DateTimeOffset? PlannedSwap { get; init; }

    /// <summary>Whether it asks for action now.</summary>
    public bool Shouts => AsksNow(Urgent, Kind, HoldsLoad, PlannedSwap is not null);

    /// <summary>
    /// Whether a notice asks for action now. A limit that is near asks no more once the swap is planned; of a chain that holds a
    /// load it always does.
    /// </summary>
    public static bool AsksNow(bool urgent, NoticeKind kind, bool holdsLoad, bool swapIsPlanned) =>
        urgent && (holdsLoad || kind != NoticeKind.LimitNear || !swapIsPlanned);

    /// <summary>Notices as a list shows them: urgent ones first, of these what no plan answers, then the newest.</summary>
    public static IQueryable<NoticeLine> InOrder(IQueryable<NoticeLine> lines) => lines.OrderByDescending(n => n.Urgent)
        .ThenBy(n => n.Kind == NoticeKind.LimitNear && n.PlannedSwap != null).ThenByDescending(n => n.RaisedAt);

    /// <summary>The lines of some notices.</summary>
    /// <param name="db">The plant's memory.</param>
    /// <param name="notices">The notices.</param>
    public static IQueryable<NoticeLine> Of(WearDb db, IQueryable<NoticeRow> notices) =>
        from notice in notices
        join chain in db.Chains on notice.ChainId equals chain.Id
        join swap in db.PlannedSwaps on chain.Id equals swap.ChainId into planned
        from swap in planned.DefaultIfEmpty()
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
            HoldsLoad = chain.Family.Lifts(chain.Lifts, chain.NotLiftingReason != ""),
            PlannedSwap = swap == null ? null : swap.Start,
        };
}
