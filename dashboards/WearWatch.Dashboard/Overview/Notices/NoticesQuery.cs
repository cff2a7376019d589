using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Overview.Notices;

/// <summary>Asks for notices, with what people did about each.</summary>
public sealed class NoticesQuery(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    /// <summary>So many are read on a page.</summary>
    private const int OnAPage = 500;

    /// <summary>The notices that a filter leaves, those that ask for a person first.</summary>
    public async Task<IReadOnlyList<NoticeLine>> AskAsync(NoticeFilter filter, CancellationToken ct, int most = OnAPage)
    {
        var time = await clock.NowAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        var notices = db.Notices.AsNoTracking().Where(n => (n.EndedAt != null) == filter.Ended);
        if (filter.Kind is { } kind) notices = notices.Where(n => n.Kind == kind);
        if (filter.UrgentOnly) notices = notices.Where(n => n.Urgent);
        if (filter.AssignedTo is { } person) notices = notices.Where(n => n.AssignedTo == person);
        var lines = NoticeLine.Of(db, notices, time.Now);
        if (filter.Line is { } line) lines = lines.Where(n => n.Line == line);
        var inOrder = NoticeLine.InOrder(lines);
        // Whether a chain lifts is for its family to say, which the database does not know.
        var shown = filter.Standing is { } standing
            ? (await inOrder.ToListAsync(ct)).Where(n => n.Attention.Standing == standing).Take(most)
            : await inOrder.Take(most).ToListAsync(ct);
        return await NoticeLine.WithStepsAsync(db, [.. shown], ct);
    }

    /// <summary>Who deals with a notice now, in the order of the names.</summary>
    public async Task<IReadOnlyList<string>> AssignedAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.Notices.Where(n => n.AssignedTo != "").Select(n => n.AssignedTo).Distinct().OrderBy(n => n)
            .ToListAsync(ct);
    }
}
