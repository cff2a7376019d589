using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Makes, finds and withdraws the keys of machines.</summary>
public sealed class KeyDesk(IDbContextFactory<WearDb> database, SecurityLog log, TimeProvider clock)
{
    private const string Mark = "ww_"; // by it a key that leaked into a file is recognised
    private const int SecretBytes = 32;
    private static readonly TimeSpan UseIsNotedEvery = TimeSpan.FromMinutes(1);

    /// <summary>All keys, those in use first.</summary>
    public async Task<IReadOnlyList<ApiKeyRow>> AskAsync(CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.ApiKeys.AsNoTracking().OrderBy(k => k.WithdrawnAt != null).ThenBy(k => k.Name).ToListAsync(ct);
    }

    /// <summary>Makes a key. The answer holds it for the only time: kept is its hash.</summary>
    public async Task<Made> MakeAsync(string name, PersonRoles roles, string by, CancellationToken ct = default)
    {
        name = name.Trim();
        if (PersonName.Fault(name) is { } fault) return new Made("", fault);
        if (roles.HasFlag(PersonRoles.Administrator)) return new Made("", $"A machine does not administer.");
        await using var db = await database.CreateDbContextAsync(ct);
        if (await db.ApiKeys.AnyAsync(k => k.Name == name, ct))
            return new Made("", $"There is a key '{name}' already; a withdrawn one keeps its name too.");
        var key = Mark + Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(SecretBytes));
        db.ApiKeys.Add(new ApiKeyRow { Name = name, Hash = HashOf(key), Roles = roles, MadeBy = by, MadeAt = clock.GetUtcNow() });
        await db.SaveChangesAsync(ct);
        await log.AddAsync(SecurityEventKind.KeyMade, $"{name} ({RoleWords.List(roles)})", ct: ct);
        return new Made(key, null);
    }

    /// <summary>The row of a key that is in use; null for another.</summary>
    public async Task<ApiKeyRow?> FindAsync(string key, CancellationToken ct = default)
    {
        if (!key.StartsWith(Mark, StringComparison.Ordinal)) return null;
        var hash = HashOf(key);
        await using var db = await database.CreateDbContextAsync(ct);
        var row = await db.ApiKeys.AsNoTracking().SingleOrDefaultAsync(k => k.Hash == hash && k.WithdrawnAt == null, ct);
        var now = clock.GetUtcNow();
        if (row is not null && !(now - row.LastUsedAt < UseIsNotedEvery))
            await db.ApiKeys.Where(k => k.Id == row.Id).ExecuteUpdateAsync(k => k.SetProperty(r => r.LastUsedAt, now), ct);
        return row;
    }

    /// <summary>Ends a key from the next request on.</summary>
    public async Task WithdrawAsync(int id, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        if (await db.ApiKeys.Where(k => k.Id == id && k.WithdrawnAt == null)
            .ExecuteUpdateAsync(k => k.SetProperty(r => r.WithdrawnAt, now), ct) == 0) return;
        var name = await db.ApiKeys.Where(k => k.Id == id).Select(k => k.Name).SingleAsync(ct);
        await log.AddAsync(SecurityEventKind.KeyWithdrawn, name, ct: ct);
    }

    private static string HashOf(string key) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key)));

    /// <summary>A key that was made, or why none was.</summary>
    /// <param name="Key">The key, shown this once; empty when none was made.</param>
    /// <param name="Fault">What stands against it, for a person; null when nothing does.</param>
    public readonly record struct Made(string Key, Phrase? Fault);
}
