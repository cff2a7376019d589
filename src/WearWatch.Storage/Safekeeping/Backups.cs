using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Safekeeping;

/// <summary>Backups of all that the plant has in its memory, photos and people among it, made while everything runs.</summary>
/// <remarks>
/// A backup is a SQLite file that can be opened, checked and carried. It is made under another name and gets its own once it was
/// checked: what is called a backup is one. It holds the hashes of passwords, so only the user who made it may read it.
/// </remarks>
public sealed class Backups(WearStore store, TimeProvider clock)
{
    /// <summary>How a backup is named: <c>wearwatch-20271231-235959.db</c>, by UTC.</summary>
    public const string Pattern = "wearwatch-*.db";

    private const string Moment = "yyyyMMdd-HHmmss";
    private const string Unfinished = ".unfinished";

    /// <summary>Far longer than a backup takes: what is older was left behind by a process that was killed.</summary>
    private static readonly TimeSpan mostForOne = TimeSpan.FromDays(1);

    /// <summary>Makes a backup and checks it by opening it.</summary>
    /// <param name="folder">Where it goes; made if it is not there.</param>
    /// <param name="keep">How many are kept there, the newest; null for all.</param>
    /// <param name="ct">Stops it; then there is none.</param>
    /// <exception cref="InvalidDataException">What was written cannot be read again.</exception>
    public async Task<Checked> BackUpAsync(string folder, int? keep = null, CancellationToken ct = default)
    {
        Directory.CreateDirectory(folder);
        var name = "wearwatch-" + clock.GetUtcNow().UtcDateTime.ToString(Moment, CultureInfo.InvariantCulture) + ".db";
        var (path, unfinished) = (Path.Combine(folder, name), Path.Combine(folder, name + Unfinished));
        if (File.Exists(path)) throw new IOException($"{path} is there already.");
        var before = clock.GetUtcNow() - mostForOne;
        Forget(folder, Pattern, old => File.GetLastWriteTimeUtc(old) < before);
        Forget(folder, name, _ => true);
        try
        {
            ClosedFile.Make(unfinished);
            await (store.Postgres is null ? WriteAsync(unfinished, ct) : CopyAsync(unfinished, ct));
            var found = await Check.FileAsync(unfinished, ct);
            if (found.Faults.Count > 0) throw new InvalidDataException(string.Join(' ', found.Faults));
            File.Move(unfinished, path);
            if (keep is { } most) Thin(folder, most);
            return found with { Path = path };
        }
        finally
        {
            Forget(folder, name, _ => true);
        }
    }

    private async Task CopyAsync(string path, CancellationToken ct)
    {
        var backup = WearStore.InSqlite(path, pooling: false);
        await backup.PrepareAsync(ct);
        await using var from = store.CreateDbContext();
        await using var to = backup.CreateDbContext();
        await MemoryCopy.CopyAsync(from, to, ct);
        await to.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = DELETE", ct);
    }

    private async Task WriteAsync(string path, CancellationToken ct)
    {
        await using var db = store.CreateDbContext();
        await db.Database.OpenConnectionAsync(ct);
        await using var copy = new SqliteConnection(Check.Address(path));
        await copy.OpenAsync(ct);
        // The engine copies page by page; a writer in between makes it begin again, and readers are not kept waiting.
        ((SqliteConnection)db.Database.GetDbConnection()).BackupDatabase(copy);
        // One file: its log is taken into it.
        await using var command = copy.CreateCommand();
        command.CommandText = "PRAGMA journal_mode = DELETE";
        await command.ExecuteNonQueryAsync(ct);
    }

    /// <summary>Deletes what unfinished backups of such a name have left, with their logs.</summary>
    private static void Forget(string folder, string name, Func<string, bool> isToGo)
    {
        foreach (var left in Directory.EnumerateFiles(folder, name + Unfinished + "*").Where(isToGo)) File.Delete(left);
    }

    private static void Thin(string folder, int keep)
    {
        foreach (var old in Directory.EnumerateFiles(folder, Pattern).OrderDescending(StringComparer.Ordinal).Skip(keep))
            File.Delete(old);
    }
}
