using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Keeps how the OpenID provider knows the sessions that were begun with company accounts.</summary>
public sealed class CompanySessions(IDbContextFactory<WearDb> database, SessionDesk sessions, TimeProvider clock)
{
    /// <summary>Keeps what belongs to a session that has just begun.</summary>
    /// <param name="session">The session.</param>
    /// <param name="providerSession">The provider's mark of it; empty where it gives none.</param>
    /// <param name="tokens">Its tokens, sealed.</param>
    public async Task KeepAsync(SessionRow session, string providerSession, string tokens)
    {
        await using var db = await database.CreateDbContextAsync();
        db.CompanySessions.Add(new CompanySessionRow
        {
            SessionId = session.Id,
            ProviderSession = providerSession,
            Tokens = tokens,
            CheckedAt = clock.GetUtcNow(),
        });
        await db.SaveChangesAsync();
    }

    /// <summary>The sealed tokens of a session; null for one that was begun otherwise.</summary>
    public async Task<string?> TokensAsync(string sessionId, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.CompanySessions.Where(s => s.SessionId == sessionId).Select(s => s.Tokens).SingleOrDefaultAsync(ct);
    }

    /// <summary>
    /// The open sessions about which the provider was not asked for some time. Each is given to one process only.
    /// </summary>
    public async Task<IReadOnlyList<(CompanySessionRow Session, int PersonId)>> DueAsync(TimeSpan every, CancellationToken ct)
    {
        var now = clock.GetUtcNow();
        var before = now - every;
        await using var db = await database.CreateDbContextAsync(ct);
        var due = await (
            from company in db.CompanySessions.AsNoTracking()
            where company.CheckedAt <= before
            join session in db.Sessions on company.SessionId equals session.Id
            where session.EndedAt == null && session.EndsAt > now
            select new { company, session.PersonId }).ToListAsync(ct);
        List<(CompanySessionRow, int)> mine = [];
        foreach (var one in due)
        {
            var taken = await db.CompanySessions
                .Where(s => s.SessionId == one.company.SessionId && s.CheckedAt == one.company.CheckedAt)
                .ExecuteUpdateAsync(s => s.SetProperty(r => r.CheckedAt, now), ct);
            if (taken == 1) mine.Add((one.company, one.PersonId));
        }

        return mine;
    }

    /// <summary>Keeps the new tokens of a session: a provider may take each one once.</summary>
    public async Task KeepAsync(string sessionId, string tokens, CancellationToken ct)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        await db.CompanySessions.Where(s => s.SessionId == sessionId)
            .ExecuteUpdateAsync(s => s.SetProperty(r => r.Tokens, tokens), ct);
    }

    /// <summary>Lets a person's next session go on as the one before: a new PIN ends that.</summary>
    public async Task MoveAsync(string before, SessionRow next)
    {
        await using var db = await database.CreateDbContextAsync();
        await db.CompanySessions.Where(s => s.SessionId == before)
            .ExecuteUpdateAsync(s => s.SetProperty(r => r.SessionId, next.Id));
    }

    /// <summary>Ends the sessions that the provider has ended: the one of its mark, else all of the person.</summary>
    /// <param name="issuer">The provider.</param>
    /// <param name="subject">The person's number there; empty where it says none.</param>
    /// <param name="providerSession">Its mark of the session; empty where it says none.</param>
    /// <param name="ct">Gives up.</param>
    public async Task EndAsync(string issuer, string subject, string providerSession, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        var ended = await (
            from company in db.CompanySessions
            join session in db.Sessions on company.SessionId equals session.Id
            join person in db.People on session.PersonId equals person.Id
            where session.EndedAt == null && person.Issuer == issuer
                && (subject == "" || person.Subject == subject)
                && (providerSession == "" || company.ProviderSession == providerSession)
            select session.Id).ToListAsync(ct);
        foreach (var id in ended) await sessions.EndAsync(id);
    }
}
