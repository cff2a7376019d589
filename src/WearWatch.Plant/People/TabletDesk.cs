using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Makes browsers shared tablets and withdraws the mark.</summary>
public sealed class TabletDesk(
    IDbContextFactory<WearDb> database, PeopleNews news, SecurityLog log, TimeProvider clock)
{
    /// <summary>All tablets, those in use first.</summary>
    public async Task<IReadOnlyList<TabletRow>> AskAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.Tablets.AsNoTracking().OrderBy(t => t.WithdrawnAt != null).ThenBy(t => t.Name).ToListAsync(ct);
    }

    /// <summary>Enters a shared tablet.</summary>
    /// <returns>The tablet, or what stands against it.</returns>
    public async Task<Marked> MarkAsync(string name, string by, CancellationToken ct = default)
    {
        name = name.Trim();
        if (PersonName.Fault(name) is { } fault) return new Marked(null, fault);
        await using var db = await database.CreateDbContextAsync(ct);
        if (await db.Tablets.AnyAsync(t => t.Name == name, ct))
            return new Marked(null, $"There is a tablet '{name}' already; a withdrawn one keeps its name too.");
        var tablet = new TabletRow { Name = name, MarkedBy = by, MarkedAt = clock.GetUtcNow() };
        db.Tablets.Add(tablet);
        await db.SaveChangesAsync(ct);
        await log.AddAsync(SecurityEventKind.TabletMarked, name, ct: ct);
        return new Marked(tablet, null);
    }

    /// <summary>A tablet in use; null when there is none of that number.</summary>
    public async Task<TabletRow?> FindAsync(int id, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.Tablets.AsNoTracking().SingleOrDefaultAsync(t => t.Id == id && t.WithdrawnAt == null, ct);
    }

    /// <summary>Ends a tablet: no PIN counts on it any more, and who switched on it is signed out.</summary>
    public async Task WithdrawAsync(int id, CancellationToken ct = default)
    {
        DateTimeOffset? now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        await db.Tablets.Where(t => t.Id == id && t.WithdrawnAt == null)
            .ExecuteUpdateAsync(t => t.SetProperty(r => r.WithdrawnAt, now), ct);
        var name = await db.Tablets.Where(t => t.Id == id).Select(t => t.Name).SingleOrDefaultAsync(ct);
        await log.AddAsync(SecurityEventKind.TabletWithdrawn, name ?? "", ct: ct);
        news.Tell();
    }

    /// <summary>What became of making a tablet: one of both is null.</summary>
    /// <param name="Tablet">The tablet.</param>
    /// <param name="Fault">What stands against it, for a person; null when nothing does.</param>
    public readonly record struct Marked(TabletRow? Tablet, Phrase? Fault);
}
