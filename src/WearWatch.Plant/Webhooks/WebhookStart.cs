using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>From where webhooks tell: not what was before the first address, but how that changes and ends.</summary>
internal static class WebhookStart
{
    /// <summary>Begins at this moment, in the transaction that adds the first address.</summary>
    public static async Task FromNowAsync(WearDb db, DateTimeOffset now, CancellationToken ct)
    {
        await db.WebhookNotices.ExecuteDeleteAsync(ct);
        await db.WebhookStops.ExecuteDeleteAsync(ct);
        if (await db.WebhookMarks.SingleOrDefaultAsync(ct) is not { } mark) db.WebhookMarks.Add(mark = new WebhookMarkRow());
        mark.NoticeId = await db.Notices.MaxAsync(n => (long?)n.Id, ct) ?? 0;
        mark.EventId = await db.Events.MaxAsync(e => (long?)e.Id, ct) ?? 0;
        var open = await db.Notices.AsNoTracking().Where(n => n.EndedAt == null).ToListAsync(ct);
        db.WebhookNotices.AddRange(open.Select(NoticeNews.Said));
        db.WebhookStops.AddRange((await StopNews.PlannedAsync(db, now, ct)).Select(StopNews.Said));
    }
}
