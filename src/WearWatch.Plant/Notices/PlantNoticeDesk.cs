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

    /// <summary>Raises one, or says anew what the open one of its kind is about.</summary>
    public async Task RaiseAsync(PlantNoticeKind kind, Phrase why, Phrase whatToDo, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await RaiseAsync(db, kind, why, whatToDo, ct);
        await db.SaveChangesAsync(ct);
    }

    /// <summary>The same together with what else is kept: it counts when that is saved.</summary>
    internal async Task RaiseAsync(WearDb db, PlantNoticeKind kind, Phrase why, Phrase whatToDo, CancellationToken ct)
    {
        var open = await db.PlantNotices.SingleOrDefaultAsync(n => n.Kind == kind && n.EndedAt == null, ct);
        if (open is null)
        {
            db.PlantNotices.Add(open = new PlantNoticeRow
            {
                Kind = kind,
                Why = why,
                WhatToDo = whatToDo,
                RaisedAt = clock.GetUtcNow(),
            });
        }

        (open.Why, open.WhatToDo) = (why, whatToDo);
    }

    /// <summary>Ends the open one of a kind, if there is one: its cause is gone.</summary>
    public async Task EndAsync(PlantNoticeKind kind, string by, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await EndAsync(db, kind, by, ct);
        await db.SaveChangesAsync(ct);
    }

    /// <summary>The same together with what else is kept: it counts when that is saved.</summary>
    internal async Task EndAsync(WearDb db, PlantNoticeKind kind, string by, CancellationToken ct)
    {
        if (await db.PlantNotices.SingleOrDefaultAsync(n => n.Kind == kind && n.EndedAt == null, ct) is { } open)
            (open.EndedAt, open.EndedBy) = (clock.GetUtcNow(), by);
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
