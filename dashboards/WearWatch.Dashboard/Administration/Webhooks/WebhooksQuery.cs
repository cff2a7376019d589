using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Webhooks;

/// <summary>Asks for the addresses to which webhooks go, and how it stands with each.</summary>
public sealed class WebhooksQuery(IDbContextFactory<WearDb> databases)
{
    /// <summary>All of them, and the lines that can be chosen.</summary>
    public async Task<WebhooksView> AskAsync(CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var addresses = await db.WebhookAddresses.AsNoTracking().OrderBy(a => a.Name)
            .Select(a => new { a.Id, a.Name, a.Url, a.Kinds, a.IsPaused, a.PausedFor, a.Failures }).ToListAsync(ct);
        var waiting = await db.WebhookDeliveries.Where(d => d.State == WebhookState.Waiting).GroupBy(d => d.AddressId)
            .Select(g => new { Id = g.Key, Count = g.Count() }).ToDictionaryAsync(g => g.Id, g => g.Count, ct);
        var delivered = await db.WebhookDeliveries.Where(d => d.State == WebhookState.Delivered).GroupBy(d => d.AddressId)
            .Select(g => new { Id = g.Key, At = g.Max(d => d.EndedAt) }).ToDictionaryAsync(g => g.Id, g => g.At, ct);
        return new WebhooksView(
            addresses.ConvertAll(a => new WebhookLine
            {
                Id = a.Id,
                Name = a.Name,
                Host = new Uri(a.Url).IdnHost,
                Kinds = a.Kinds,
                IsPaused = a.IsPaused,
                PausedFor = a.PausedFor,
                Failures = a.Failures,
                Waiting = waiting.GetValueOrDefault(a.Id),
                DeliveredAt = delivered.GetValueOrDefault(a.Id),
            }),
            await db.Chains.Select(c => c.Line).Distinct().OrderBy(l => l).ToListAsync(ct));
    }
}
