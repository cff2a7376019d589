using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Lets people in by PIN on shared tablets, and counts what is wrong.</summary>
public sealed class PinDesk(
    IDbContextFactory<WearDb> database, IPasswordHasher<PersonRow> hasher, SecurityLog log, TimeProvider clock)
{
    /// <summary>Those who can switch by PIN, by name.</summary>
    public async Task<IReadOnlyList<PersonRow>> AskAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await WithPin(db.People.AsNoTracking(), clock.GetUtcNow()).OrderBy(p => p.NormalizedUserName).ToListAsync(ct);
    }

    /// <summary>Tries a PIN. A try is counted before it is looked at, so that many at once are no way around the count.</summary>
    public async Task<Answer> TryAsync(TabletRow tablet, int personId, string pin, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        DateTimeOffset? freeAgain = now + Pin.Locked;
        await using var db = await database.CreateDbContextAsync(ct);
        if (!await db.Tablets.AnyAsync(t => t.Id == tablet.Id && t.WithdrawnAt == null, ct))
            return new Answer(null, PinWords.NoTablet);
        var counted = await WithPin(db.People, now).Where(p => p.Id == personId && (p.LockoutEnd == null || p.LockoutEnd <= now))
            .ExecuteUpdateAsync(
            p => p.SetProperty(r => r.LockoutEnd, r => (r.PinMisses + 1) % Pin.MissesForAWhile == 0 ? freeAgain : r.LockoutEnd)
                .SetProperty(r => r.PinMisses, r => r.PinMisses + 1), ct);
        var person = await WithPin(db.People.AsNoTracking(), now).SingleOrDefaultAsync(p => p.Id == personId, ct);
        if (person is null) return new Answer(null, PinWords.NoPin);
        if (counted == 0) return new Answer(null, PinWords.Locked);
        if (hasher.VerifyHashedPassword(person, person.PinHash!, pin) == PasswordVerificationResult.Failed)
            return new Answer(null, await MissedAsync(db, person, ct));
        await db.People.Where(p => p.Id == personId).ExecuteUpdateAsync(
            p => p.SetProperty(r => r.PinMisses, 0).SetProperty(r => r.LockoutEnd, (DateTimeOffset?)null), ct);
        return new Answer(person, null);
    }

    private async Task<Phrase> MissedAsync(WearDb db, PersonRow person, CancellationToken ct)
    {
        await log.AddAsync(SecurityEventKind.SignInFailed, person.UserName!, ct: ct);
        if (person.PinMisses < Pin.MissesForEver)
            return person.PinMisses % Pin.MissesForAWhile == 0 ? PinWords.Locked : PinWords.Wrong;
        await db.People.Where(p => p.Id == person.Id).ExecuteUpdateAsync(p => p.SetProperty(r => r.PinHash, (string?)null), ct);
        await log.AddAsync(SecurityEventKind.PinTakenAway, person.UserName!, ct: ct);
        return PinWords.TakenAway;
    }

    private static IQueryable<PersonRow> WithPin(IQueryable<PersonRow> people, DateTimeOffset now) =>
        people.Where(PersonRow.CanComeIn(now)).Where(p => p.PinHash != null && !p.MustChoosePassword);

    /// <summary>Whom the PIN let in, or why nobody.</summary>
    /// <param name="Person">The person; null for nobody.</param>
    /// <param name="Fault">What stands against it, for a person; null when nothing does.</param>
    public readonly record struct Answer(PersonRow? Person, Phrase? Fault);
}
