using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Telemetry;

/// <summary>Lets messages in that were set aside once their cause is gone, or throws them away.</summary>
public sealed class SetAsideDesk(IDbContextFactory<WearDb> database, TelemetryDesk desk, TimeProvider clock)
{
    /// <summary>Takes a message in as if it arrived now.</summary>
    /// <returns>Null when it is in; else why it still cannot be.</returns>
    public async Task<Phrase?> ReleaseAsync(long id, string by, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        if (await db.SetAside.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id, ct) is not { } row)
            return $"There is no such message.";
        var taken = await desk.TakeAsync([new Arrival(row.Topic, row.Payload, row.LastAt)], ct);
        if (taken.SetAside > 0)
            return await db.SetAside.Where(s => s.Id == id).Select(s => s.Reason).SingleAsync(ct);
        await SettleAsync(db, id, Settlement.Released, by, ct);
        return null;
    }

    /// <summary>Puts a message away for good; its row stays for the record until it is thinned.</summary>
    public async Task DiscardAsync(long id, string by, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        await SettleAsync(db, id, Settlement.Discarded, by, ct);
    }

    private Task<int> SettleAsync(WearDb db, long id, Settlement settlement, string by, CancellationToken ct)
    {
        var now = clock.GetUtcNow();
        return db.SetAside.Where(s => s.Id == id).ExecuteUpdateAsync(
            set => set.SetProperty(s => s.Settlement, settlement).SetProperty(s => s.SettledAt, now)
                .SetProperty(s => s.SettledBy, by), ct);
    }
}
