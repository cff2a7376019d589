using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Safekeeping;

/// <summary>Brings a backup back, into a place that is empty.</summary>
public sealed class Restoration(WearStore store)
{
    /// <summary>Checks the backup, brings it back, and counts that all of it has arrived.</summary>
    /// <param name="backup">The file.</param>
    /// <param name="ct">Stops it.</param>
    /// <exception cref="InvalidDataException">
    /// The backup is damaged, or the place is not empty. Nothing was changed.
    /// </exception>
    public async Task<Checked> RestoreAsync(string backup, CancellationToken ct = default)
    {
        if (!File.Exists(backup)) throw new InvalidDataException($"There is no file {backup}.");
        var found = await Check.FileAsync(backup, ct);
        if (found.Faults.Count > 0) throw new InvalidDataException($"The backup is damaged. {string.Join(' ', found.Faults)}");
        await store.PrepareAsync(ct);
        await using (var db = store.CreateDbContext())
        {
            if (await db.Chains.AnyAsync(ct) || await db.People.AnyAsync(ct))
                throw new InvalidDataException("There is a plant here already. Restore into an empty data folder.");
            await (store.Postgres is null ? WriteAsync(backup, db, ct) : CopyAsync(backup, db, ct));
        }

        // A backup of an older layout is brought to the present one.
        await store.PrepareAsync(ct);
        var arrived = await Check.MemoryAsync(store, ct);
        foreach (var (table, rows) in found.Rows.Where(r => arrived.Rows.GetValueOrDefault(r.Key, r.Value) < r.Value))
            throw new InvalidDataException($"Of {table} {rows} rows were in the backup and {arrived.Rows[table]} arrived.");
        return arrived;
    }

    private static async Task WriteAsync(string backup, WearDb to, CancellationToken ct)
    {
        await to.Database.OpenConnectionAsync(ct);
        await using var source = new SqliteConnection(Check.Address(backup) + ";Mode=ReadOnly");
        await source.OpenAsync(ct);
        source.BackupDatabase((SqliteConnection)to.Database.GetDbConnection());
    }

    /// <summary>Into PostgreSQL, by way of a copy that is brought to the present layout first.</summary>
    private static async Task CopyAsync(string backup, WearDb to, CancellationToken ct)
    {
        var folder = Directory.CreateTempSubdirectory("wearwatch-restore-");
        try
        {
            var copy = Path.Combine(folder.FullName, "copy.db");
            File.Copy(backup, copy);
            var source = WearStore.InSqlite(copy, pooling: false);
            await source.PrepareAsync(ct);
            await using var from = source.CreateDbContext();
            await using var transaction = await to.Database.BeginTransactionAsync(ct);
            await MemoryCopy.CopyAsync(from, to, ct);
            await transaction.CommitAsync(ct);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
