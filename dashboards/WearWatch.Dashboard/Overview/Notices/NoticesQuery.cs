using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Overview.Notices;

/// <summary>Asks for notices, and keeps what a person says of them.</summary>
public sealed class NoticesQuery(IDbContextFactory<WearDb> databases)
{
    private const int Most = 500;

    /// <summary>The notices that a filter leaves, urgent ones first, at most 500.</summary>
    public async Task<IReadOnlyList<NoticeLine>> AskAsync(NoticeFilter filter, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var notices =
            from notice in db.Notices
            join chain in db.Chains on notice.ChainId equals chain.Id
            where (notice.EndedAt != null) == filter.Ended
            select new { notice, chain };
        if (filter.Kind is { } kind) notices = notices.Where(n => n.notice.Kind == kind);
        if (filter.Line is { } line) notices = notices.Where(n => n.chain.Line == line);
        if (filter.UrgentOnly) notices = notices.Where(n => n.notice.Urgent);
        return await notices.OrderByDescending(n => n.notice.Urgent).ThenByDescending(n => n.notice.RaisedAt).Take(Most)
            .Select(n => new NoticeLine
            {
                Id = n.notice.Id,
                ChainId = n.notice.ChainId,
                Chain = n.chain.Name,
                Line = n.chain.Line,
                Kind = n.notice.Kind,
                Urgent = n.notice.Urgent,
                Why = n.notice.Why,
                WhatToDo = n.notice.WhatToDo,
                RaisedAt = n.notice.RaisedAt,
                EndedAt = n.notice.EndedAt,
                JudgedReal = n.notice.JudgedReal,
                JudgedBy = n.notice.JudgedBy,
            })
            .ToListAsync(ct);
    }
}
