using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.WorkOrders;
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

    public required Phrase Why { get; init; }

    public required Phrase WhatToDo { get; init; }

    public required DateTimeOffset RaisedAt { get; init; }

    public required DateTimeOffset? EndedAt { get; init; }

    public required bool? JudgedReal { get; init; }

    public required string JudgedBy { get; init; }

    /// <summary>Whether the chain lifts or holds a load.</summary>
    public required bool HoldsLoad { get; init; }

    /// <summary>When the shutdown begins in which the chain's swap is planned; null when none is.</summary>
    public required DateTimeOffset? PlannedSwap { get; init; }

    /// <summary>The work order of that swap in another system; null while none was reported.</summary>
    public WorkOrder? Order { get; init; }

    /// <summary>Whether a person has acknowledged it.</summary>
    public required bool Acknowledged { get; init; }

    /// <summary>Until when a person has put it off; null when nobody has.</summary>
    public required DateTimeOffset? SnoozedUntil { get; init; }

    /// <summary>Whether that lies ahead.</summary>
    public required bool IsSnoozed { get; init; }

    /// <summary>Who deals with it; empty for nobody.</summary>
    public required string AssignedTo { get; init; }

    /// <summary>What was done about it, from the first.</summary>
    public IReadOnlyList<NoticeStepRow> Steps { get; init; } = [];

    /// <summary>Whether it asks for a person.</summary>
    public NoticeAttention Attention => new(Kind, Urgent, HoldsLoad)
    {
        IsAcknowledged = Acknowledged,
        IsSnoozed = IsSnoozed,
        SwapIsPlanned = PlannedSwap is not null,
    };

    /// <summary>Whether it asks for action now.</summary>
    public bool Shouts => EndedAt is null && Attention.Shouts;

    /// <summary>
    /// Notices as a list shows them: what nobody has acknowledged or put off, of these the urgent ones first, of these what no
    /// plan answers, then the newest.
    /// </summary>
    public static IQueryable<NoticeLine> InOrder(IQueryable<NoticeLine> lines) => lines
        .OrderBy(n => n.Acknowledged || n.IsSnoozed).ThenByDescending(n => n.Urgent)
        .ThenBy(n => n.Kind == NoticeKind.LimitNear && n.PlannedSwap != null).ThenByDescending(n => n.RaisedAt)
        .ThenBy(n => n.Id);

    /// <summary>Lines with what was done about each, and the work orders of their swaps.</summary>
    public static async Task<IReadOnlyList<NoticeLine>> WithStepsAsync(
        WearDb db, IReadOnlyList<NoticeLine> lines, CancellationToken ct)
    {
        var ids = lines.Select(n => n.Id).ToList();
        var steps = (await db.NoticeSteps.AsNoTracking().Where(s => ids.Contains(s.NoticeId)).OrderBy(s => s.Id)
            .ToListAsync(ct)).ToLookup(s => s.NoticeId);
        return [.. (await WithOrdersAsync(db, lines, ct)).Select(n => n with { Steps = [.. steps[n.Id]] })];
    }

    /// <summary>Lines with the work orders of the planned swaps.</summary>
    public static async Task<IReadOnlyList<NoticeLine>> WithOrdersAsync(
        WearDb db, IReadOnlyList<NoticeLine> lines, CancellationToken ct)
    {
        var orders = await db.PlannedOrdersAsync(ct);
        return [.. lines.Select(n => n with { Order = orders.GetValueOrDefault(n.ChainId) })];
    }

    /// <summary>The lines of some notices.</summary>
    /// <param name="db">The plant's memory.</param>
    /// <param name="notices">The notices.</param>
    /// <param name="now">The moment for which they are shown.</param>
    public static IQueryable<NoticeLine> Of(WearDb db, IQueryable<NoticeRow> notices, DateTimeOffset now) =>
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
            Acknowledged = notice.Acknowledged,
            SnoozedUntil = notice.SnoozedUntil,
            IsSnoozed = notice.SnoozedUntil != null && notice.SnoozedUntil > now,
            AssignedTo = notice.AssignedTo,
            HoldsLoad = chain.Family.Lifts(chain.Lifts, chain.NotLiftingReason != ""),
            PlannedSwap = swap == null ? null : swap.Start,
        };
}
