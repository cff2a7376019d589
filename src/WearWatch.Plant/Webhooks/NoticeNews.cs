using System.Globalization;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>Which notices were raised, changed or ended since webhooks last said so.</summary>
internal static class NoticeNews
{
    private const int MostAtOnce = 500;

    /// <summary>Whether there is any.</summary>
    public static async Task<bool> IsThereAsync(WearDb db, WebhookMarkRow mark, CancellationToken ct) =>
        await db.Notices.AnyAsync(n => n.Id > mark.NoticeId, ct) || await Changed(db).AnyAsync(ct);

    /// <summary>Takes what there is, and keeps that it was said. In the transaction in which the events are written.</summary>
    public static async Task<IReadOnlyList<WebhookEvent>> TakeAsync(
        WearDb db, WebhookMarkRow mark, DateTimeOffset now, CancellationToken ct)
    {
        var events = new List<WebhookEvent>();
        var fresh = await db.Notices.AsNoTracking().Where(n => n.Id > mark.NoticeId).OrderBy(n => n.Id).Take(MostAtOnce)
            .Join(db.Chains, n => n.ChainId, c => c.Id, (notice, chain) => new { notice, chain }).ToListAsync(ct);
        foreach (var (notice, chain) in fresh.Select(f => (f.notice, f.chain)).OrderBy(f => f.notice.Id))
        {
            events.Add(Event(WebhookEventKind.NoticeRaised, notice, chain, notice.RaisedAt));
            if (notice.EndedAt is { } ended) events.Add(Event(WebhookEventKind.NoticeEnded, notice, chain, ended));
            else db.WebhookNotices.Add(Said(notice));
            mark.NoticeId = notice.Id;
        }

        var changed = await Changed(db).OrderBy(c => c.Notice.Id).Take(MostAtOnce).ToListAsync(ct);
        var ids = changed.ConvertAll(c => c.Notice.ChainId);
        var chains = await db.Chains.AsNoTracking().Where(c => ids.Contains(c.Id)).ToDictionaryAsync(c => c.Id, ct);
        foreach (var (said, notice) in changed.Select(c => (c.Said, c.Notice)))
        {
            var chain = chains[notice.ChainId];
            events.Add(notice.EndedAt is { } ended
                ? Event(WebhookEventKind.NoticeEnded, notice, chain, ended)
                : Event(WebhookEventKind.NoticeChanged, notice, chain, now));
            if (notice.EndedAt is null) db.Entry(said).CurrentValues.SetValues(Said(notice));
            else db.WebhookNotices.Remove(said);
        }

        return events;
    }

    /// <summary>What is remembered of a notice once it was said.</summary>
    public static WebhookNoticeRow Said(NoticeRow notice) => new()
    {
        NoticeId = notice.Id,
        Urgent = notice.Urgent,
        Acknowledged = notice.Acknowledged,
        SnoozedUntil = notice.SnoozedUntil,
        AssignedTo = notice.AssignedTo,
    };

    private static IQueryable<SaidNotice> Changed(WearDb db) =>
        from said in db.WebhookNotices
        join notice in db.Notices on said.NoticeId equals notice.Id
        where notice.EndedAt != null || notice.Urgent != said.Urgent || notice.Acknowledged != said.Acknowledged
            || notice.SnoozedUntil != said.SnoozedUntil || notice.AssignedTo != said.AssignedTo
        select new SaidNotice { Said = said, Notice = notice };

    private static WebhookEvent Event(WebhookEventKind kind, NoticeRow notice, ChainRow chain, DateTimeOffset at)
    {
        var data = NoticeEventJson.Of(notice, chain);
        if (kind == WebhookEventKind.NoticeRaised) data = data with { EndedAt = null };
        var what = kind switch
        {
            WebhookEventKind.NoticeRaised => "raised",
            WebhookEventKind.NoticeEnded => "ended",
            _ => "changed",
        };
        return new WebhookEvent(
            WebhookEvent.IdOf(string.Create(CultureInfo.InvariantCulture, $"notice-{notice.Id}-{what}"), at), kind, at,
            chain.Name, chain.Line, JsonSerializer.SerializeToNode(data, WebhookJson.Default.NoticeEventJson)!);
    }

    private sealed class SaidNotice
    {
        public required WebhookNoticeRow Said { get; init; }

        public required NoticeRow Notice { get; init; }
    }
}
