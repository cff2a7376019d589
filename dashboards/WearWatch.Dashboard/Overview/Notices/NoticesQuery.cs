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
        var notices = db.Notices.Where(n => (n.EndedAt != null) == filter.Ended);
        if (filter.Kind is { } kind) notices = notices.Where(n => n.Kind == kind);
        if (filter.UrgentOnly) notices = notices.Where(n => n.Urgent);
        var lines = NoticeLine.Of(db, notices);
        if (filter.Line is { } line) lines = lines.Where(n => n.Line == line);
        return await NoticeLine.InOrder(lines).Take(Most).ToListAsync(ct);
    }
}
