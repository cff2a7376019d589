using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Webhooks;

/// <summary>Asks for what was sent to receivers and what waits, the newest first.</summary>
public sealed class WebhookLogQuery(IDbContextFactory<WearDb> databases)
{
    /// <summary>Lines that the page shows.</summary>
    public const int Shown = 200;

    /// <summary>The newest lines, of one address or of all, in one state or in any.</summary>
    public async Task<IReadOnlyList<WebhookLogLine>> AskAsync(int? addressId, WebhookState? state, CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await (
            from sent in db.WebhookDeliveries
            where (addressId == null || sent.AddressId == addressId) && (state == null || sent.State == state)
            join address in db.WebhookAddresses on sent.AddressId equals address.Id
            orderby sent.Id descending
            select new WebhookLogLine
            {
                Id = sent.Id,
                Address = address.Name,
                Kind = sent.Kind,
                Subject = sent.Subject,
                WrittenAt = sent.WrittenAt,
                State = sent.State,
                Tries = sent.Tries,
                EndedAt = sent.EndedAt,
                Fault = sent.Fault,
            }).Take(Shown).ToListAsync(ct);
    }
}
