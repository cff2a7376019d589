using System.Globalization;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>Which replacements of chains were recorded since webhooks last said so.</summary>
internal static class ReplacementNews
{
    /// <summary>What was recorded later than this is history that was taken in, and no news (common practice).</summary>
    private static readonly TimeSpan latest = TimeSpan.FromDays(31);

    /// <summary>Whether anything was recorded.</summary>
    public static Task<bool> IsThereAsync(WearDb db, WebhookMarkRow mark, CancellationToken ct) =>
        db.Events.AnyAsync(e => e.Id > mark.EventId, ct);

    /// <summary>Takes what there is, and keeps that it was said. In the transaction in which the events are written.</summary>
    public static async Task<IReadOnlyList<WebhookEvent>> TakeAsync(WearDb db, WebhookMarkRow mark, CancellationToken ct)
    {
        var told = await db.Events.AsNoTracking()
            .Where(e => e.Id > mark.EventId && e.Kind == ChainEventKind.Replacement)
            .Join(db.Chains, e => e.ChainId, c => c.Id, (row, chain) => new { row, chain }).ToListAsync(ct);
        mark.EventId = await db.Events.MaxAsync(e => (long?)e.Id, ct) ?? mark.EventId;
        return
        [
            .. from one in told
               orderby one.row.Id
               where one.row.ReceivedAt - (one.row.At ?? one.row.ReceivedAt) <= latest
               select Event(one.row, one.chain),
        ];
    }

    private static WebhookEvent Event(EventRow told, ChainRow chain) => new(
        WebhookEvent.IdOf(string.Create(CultureInfo.InvariantCulture, $"replacement-{told.Id}"), told.ReceivedAt),
        WebhookEventKind.ChainReplaced, told.ReceivedAt, chain.Name, chain.Line,
        JsonSerializer.SerializeToNode(ReplacementEventJson.Of(told, chain), WebhookJson.Default.ReplacementEventJson)!);
}
