using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Notices;

/// <summary>Asks for notices about the whole plant, and closes one when a person has seen it.</summary>
public sealed class PlantNoticeDesk(IDbContextFactory<WearDb> databases, TimeProvider clock)
{
    /// <summary>The open ones.</summary>
    public async Task<IReadOnlyList<PlantNoticeRow>> AskAsync(CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.PlantNotices.AsNoTracking().Where(n => n.EndedAt == null).OrderBy(n => n.Id).ToListAsync(ct);
    }

    /// <summary>Closes one; what was done about the forecasts stays.</summary>
    public async Task CloseAsync(int id, string by, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.PlantNotices.FindAsync([id], ct) is not { EndedAt: null } notice) return;
        (notice.EndedAt, notice.EndedBy) = (clock.GetUtcNow(), by);
        await db.SaveChangesAsync(ct);
    }
}
