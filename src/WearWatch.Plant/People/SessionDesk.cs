using System.Data.Common;
using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Begins and ends people's sessions. A cookie is worth nothing without its open row here.</summary>
public sealed class SessionDesk(
    IDbContextFactory<WearDb> database, PeopleNews news, SecurityLog log, IOrigin origin, TimeProvider clock)
{
    private const int IdBytes = 16;
    private const int LongestDevice = 120;

    /// <summary>So long a session on a shared tablet outlives the last touch (half an hour: common practice).</summary>
    public static TimeSpan OnTablet { get; } = TimeSpan.FromMinutes(30);

    private static readonly TimeSpan fresh = TimeSpan.FromMinutes(10);
    private static readonly TimeSpan aShift = TimeSpan.FromHours(12);
    private static readonly TimeSpan staying = TimeSpan.FromDays(14);
    private static readonly TimeSpan atMost = TimeSpan.FromDays(30);

    /// <summary>Begins a session.</summary>
    /// <param name="person">Whose.</param>
    /// <param name="tabletId">The shared tablet; null on a device of one's own.</param>
    /// <param name="stays">Whether it outlives the shift.</param>
    /// <param name="device">What the browser says it is.</param>
    public async Task<SessionRow> BeginAsync(PersonRow person, int? tabletId, bool stays, string device)
    {
        var now = clock.GetUtcNow();
        var session = new SessionRow
        {
            Id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes)),
            PersonId = person.Id,
            TabletId = tabletId,
            BegunAt = now,
            SeenAt = now,
            EndsAt = now + (tabletId is not null ? OnTablet : stays ? staying : aShift),
            Device = device.Length <= LongestDevice ? device : device[..LongestDevice],
            Address = origin.Address,
        };
        await using var db = await database.CreateDbContextAsync();
        db.Sessions.Add(session);
        await db.SaveChangesAsync();
        await log.AddAsync(SecurityEventKind.SignedIn, who: person.UserName);
        return session;
    }

    /// <summary>A person's open sessions, the last used first.</summary>
    public async Task<IReadOnlyList<SessionRow>> AskAsync(int personId, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await Open(db).Where(s => s.PersonId == personId).OrderByDescending(s => s.SeenAt).ToListAsync(ct);
    }

    /// <summary>Whether a person signed in on a device of one's own a moment ago.</summary>
    public async Task<bool> IsFreshAsync(int personId, CancellationToken ct = default)
    {
        var since = clock.GetUtcNow() - fresh;
        await using var db = await database.CreateDbContextAsync(ct);
        return await Open(db).AnyAsync(s => s.PersonId == personId && s.TabletId == null && s.BegunAt >= since, ct);
    }

    /// <summary>An open session with its person; null for one that has ended.</summary>
    public async Task<(SessionRow Session, PersonRow Person)?> FindAsync(string id, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        var found = await Open(db).Where(s => s.Id == id && (s.TabletId == null
                || db.Tablets.Any(t => t.Id == s.TabletId && t.WithdrawnAt == null)))
            .Join(db.People.AsNoTracking().Where(PersonRow.CanComeIn(now)),
                s => s.PersonId, p => p.Id, (Session, Person) => new { Session, Person })
            .SingleOrDefaultAsync(ct);
        return found is null ? null : (found.Session, found.Person);
    }

    /// <summary>
    /// Keeps that a session was used, which puts its end off. Where the store cannot be written, it ends earlier.
    /// </summary>
    public async Task TouchAsync(SessionRow session)
    {
        var now = clock.GetUtcNow();
        var lasts = session.EndsAt - session.SeenAt;
        if (now - session.SeenAt < lasts / 30) return;
        var ends = now + lasts < session.BegunAt + atMost ? now + lasts : session.BegunAt + atMost;
        try
        {
            await using var db = await database.CreateDbContextAsync();
            await db.Sessions.Where(s => s.Id == session.Id && s.EndedAt == null)
                .ExecuteUpdateAsync(s => s.SetProperty(r => r.SeenAt, now).SetProperty(r => r.EndsAt, ends));
        }
        catch (DbException)
        {
            return;
        }
    }

    /// <summary>Ends one session, as by signing out.</summary>
    public async Task EndAsync(string id)
    {
        if (await EndAsync(s => s.Id == id) > 0) await log.AddAsync(SecurityEventKind.SignedOut);
    }

    /// <summary>Ends every session of a person, on every device.</summary>
    public Task EndAllAsync(int personId) => EndAsync(s => s.PersonId == personId);

    /// <summary>Ends every session of a person because the person or an administrator wants it so.</summary>
    public async Task SignOutEverywhereAsync(PersonRow person)
    {
        await EndAllAsync(person.Id);
        await log.AddAsync(SecurityEventKind.SignedOutEverywhere, person.UserName!);
    }

    /// <summary>Removes sessions that ended long ago.</summary>
    public async Task ThinAsync(CancellationToken ct = default)
    {
        var before = clock.GetUtcNow() - atMost;
        await using var db = await database.CreateDbContextAsync(ct);
        await db.Sessions.Where(s => s.EndsAt < before || s.EndedAt < before).ExecuteDeleteAsync(ct);
    }

    private async Task<int> EndAsync(System.Linq.Expressions.Expression<Func<SessionRow, bool>> which)
    {
        DateTimeOffset? now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync();
        var ended = await db.Sessions.Where(s => s.EndedAt == null).Where(which)
            .ExecuteUpdateAsync(s => s.SetProperty(r => r.EndedAt, now));
        news.Tell();
        return ended;
    }

    private IQueryable<SessionRow> Open(WearDb db)
    {
        var now = clock.GetUtcNow();
        return db.Sessions.AsNoTracking().Where(s => s.EndedAt == null && s.EndsAt > now);
    }
}
