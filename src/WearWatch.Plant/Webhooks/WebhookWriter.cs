using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using WearWatch.Plant.Planning;
using WearWatch.Storage;

namespace WearWatch.Plant.Webhooks;

/// <summary>Looks for what webhooks have to say, and writes it for each address that wants it.</summary>
/// <remarks>
/// What is written and how far was looked are kept in one transaction, one at a time over all processes: nothing is missed or
/// written twice, whenever a process ends. The look compares with what was said last, so it finds what came about while nobody
/// looked.
/// </remarks>
public sealed class WebhookWriter(
    IDbContextFactory<WearDb> databases, KeptPlan plan, IOptions<WebhookOptions> options, TimeProvider clock)
{
    /// <summary>Writes all that there is to say.</summary>
    public async Task RunOnceAsync(CancellationToken ct = default)
    {
        await using var look = await databases.CreateDbContextAsync(ct);
        if (!await look.WebhookAddresses.AnyAsync(ct)) return;
        while (await IsNewsOfChainsAsync(look, ct)) await WriteAsync(TakeOfChainsAsync, ct);
        while (await StopNews.IsThereAsync(look, clock.GetUtcNow(), ct))
        {
            // Worked out before the transaction, as that may take seconds and keeps all others from writing.
            var kept = await plan.AskAsync(ct);
            await WriteAsync((db, now, stop) => TakeOfStopsAsync(db, kept, now, stop), ct);
        }
    }

    private static async Task<bool> IsNewsOfChainsAsync(WearDb look, CancellationToken ct)
    {
        var mark = await look.WebhookMarks.AsNoTracking().SingleAsync(ct);
        return await NoticeNews.IsThereAsync(look, mark, ct) || await ReplacementNews.IsThereAsync(look, mark, ct);
    }

    private static async Task<IReadOnlyList<WebhookEvent>> TakeOfChainsAsync(
        WearDb db, DateTimeOffset now, CancellationToken ct)
    {
        var mark = await db.WebhookMarks.SingleAsync(ct);
        return [.. await ReplacementNews.TakeAsync(db, mark, ct), .. await NoticeNews.TakeAsync(db, mark, now, ct)];
    }

    /// <summary>Nothing when somebody decided otherwise meanwhile: then the next look has the newer plan.</summary>
    private static async Task<IReadOnlyList<WebhookEvent>> TakeOfStopsAsync(
        WearDb db, KeptPlanView kept, DateTimeOffset now, CancellationToken ct) =>
        await PlanQuery.RevisionAsync(db, ct) == kept.Picture.Revision ? await StopNews.TakeAsync(db, kept, now, ct) : [];

    private async Task WriteAsync(
        Func<WearDb, DateTimeOffset, CancellationToken, Task<IReadOnlyList<WebhookEvent>>> take, CancellationToken ct)
    {
        var now = clock.GetUtcNow();
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var addresses = await db.WebhookAddresses.AsNoTracking().ToListAsync(ct);
        foreach (var one in await take(db, now, ct))
        {
            var body = one.Body(options.Value.Source);
            db.WebhookDeliveries.AddRange(addresses.Where(one.IsFor).Select(a => one.To(a.Id, body, now)));
        }

        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
    }
}
