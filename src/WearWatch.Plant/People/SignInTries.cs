using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>
/// Counts tries at the door before they are looked at, so that many at once are no way around the count. The more have missed,
/// the longer the next one waits.
/// </summary>
/// <remarks>
/// Counted are the account, whether it exists or not, and the address. A device from which the person has signed in before is
/// counted for itself: a stranger who guesses at a name delays strangers, not the person.
/// </remarks>
public sealed class SignInTries(IDbContextFactory<WearDb> database, TimeProvider clock)
{
    /// <summary>Wrong tries of one account or device that cost nothing.</summary>
    public const int FreeForAccount = 5;

    /// <summary>Wrong tries from one address that cost nothing: a whole shift may come through one.</summary>
    public const int FreeForAddress = 50;

    /// <summary>No try waits longer: a hundred tries of one account take a day at least.</summary>
    public static TimeSpan LongestDelay { get; } = TimeSpan.FromMinutes(15);

    private static readonly TimeSpan forgotten = TimeSpan.FromDays(1);

    /// <summary>Counts a try.</summary>
    /// <param name="account">What is tried: a name as it was typed, or what else stands for one account.</param>
    /// <param name="device">The device, if the account's person has come in from it before; null for a strange one.</param>
    /// <param name="address">Where it comes from.</param>
    /// <param name="ct">Gives up.</param>
    /// <returns>Zero when it may be looked at; else how long to wait, and nothing was counted.</returns>
    public async Task<TimeSpan> CountAsync(string account, string? device, string address, CancellationToken ct = default)
    {
        var now = clock.GetUtcNow();
        await using var db = await database.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var of = await RowAsync(db, SubjectOf(account, device), now, ct);
        var from = await RowAsync(db, Hash("address", address), now, ct);
        var free = of.FreeAt > from.FreeAt ? of.FreeAt : from.FreeAt;
        if (free > now) return free - now;
        Count(of, FreeForAccount, now);
        Count(from, FreeForAddress, now);
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        return TimeSpan.Zero;
    }

    /// <summary>A try was right: what missed before counts no more.</summary>
    public async Task ForgetAsync(string account, string? device, CancellationToken ct = default)
    {
        var subject = SubjectOf(account, device);
        await using var db = await database.CreateDbContextAsync(ct);
        await db.SignInTries.Where(t => t.Subject == subject).ExecuteDeleteAsync(ct);
    }

    /// <summary>Removes counts that are old.</summary>
    public async Task ThinAsync(CancellationToken ct = default)
    {
        var before = clock.GetUtcNow() - forgotten;
        await using var db = await database.CreateDbContextAsync(ct);
        await db.SignInTries.Where(t => t.LastAt < before).ExecuteDeleteAsync(ct);
    }

    /// <summary>How long the next try waits: twice as long after each one that missed.</summary>
    /// <param name="tries">Tries that missed.</param>
    /// <param name="free">How many cost nothing.</param>
    public static TimeSpan DelayAfter(int tries, int free)
    {
        if (tries < free) return TimeSpan.Zero;
        var seconds = Math.Pow(2, Math.Min(tries - free + 1, 20));
        return seconds < LongestDelay.TotalSeconds ? TimeSpan.FromSeconds(seconds) : LongestDelay;
    }

    private static void Count(SignInTryRow row, int free, DateTimeOffset now)
    {
        row.Tries++;
        row.LastAt = now;
        row.FreeAt = now + DelayAfter(row.Tries, free);
    }

    private static async Task<SignInTryRow> RowAsync(WearDb db, string subject, DateTimeOffset now, CancellationToken ct)
    {
        var row = await db.SignInTries.SingleOrDefaultAsync(t => t.Subject == subject, ct);
        if (row is null) db.SignInTries.Add(row = new SignInTryRow { Subject = subject });
        // A clock that was set back must not keep anybody out for longer than the longest delay.
        if (now - row.LastAt > forgotten || row.FreeAt - now > LongestDelay) (row.Tries, row.FreeAt) = (0, default);
        return row;
    }

    private static string SubjectOf(string account, string? device) =>
        device is null ? Hash("account", account.ToUpperInvariant()) : Hash("device", device, account.ToUpperInvariant());

    private static string Hash(params string[] parts) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\u001f', parts))));
}
