using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Notices;

/// <summary>
/// Hands an entry that was refused to the planner: it stands in the one open notice of such entries, with all that it said, until
/// a person closes that.
/// </summary>
public sealed class HandedEntryDesk(IDbContextFactory<WearDb> databases, TimeProvider clock)
{
    /// <summary>Hands an entry on; the same words handed twice stand there once.</summary>
    /// <param name="entry">Who told what of which chain and when, and why it was refused; one line.</param>
    /// <param name="ct">Stops it.</param>
    public async Task HandAsync(string entry, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var handed = db.PlantNotices.Where(n => n.Kind == PlantNoticeKind.EntriesHanded);
        if ((await handed.Select(n => n.Why).ToListAsync(ct))
            .Exists(why => why.ToString().Contains(entry, StringComparison.Ordinal))) return;
        if (await handed.SingleOrDefaultAsync(n => n.EndedAt == null, ct) is { } open)
        {
            open.Why = Phrase.Verbatim($"{open.Why}\n{entry}");
        }
        else
        {
            db.PlantNotices.Add(new PlantNoticeRow
            {
                Kind = PlantNoticeKind.EntriesHanded,
                Why = Phrase.Verbatim(entry),
                WhatToDo = $"Ask who entered it, and record it by hand where it is right.",
                RaisedAt = clock.GetUtcNow(),
            });
        }

        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
    }
}
