using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace WearWatch.Storage;

/// <summary>How the plant's memory is kept in a SQLite file.</summary>
public static class WearSqlite
{
    /// <summary>How long a writer waits for another one before it gives up.</summary>
    public static readonly TimeSpan BusyTimeout = TimeSpan.FromSeconds(30);

    /// <summary>Keeps the memory in this file, which <see cref="PrepareAsync"/> makes.</summary>
    public static DbContextOptionsBuilder UseWearSqlite(this DbContextOptionsBuilder builder, string path)
    {
        var connection = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            ForeignKeys = true,
            DefaultTimeout = (int)BusyTimeout.TotalSeconds,
        };
        return builder.UseSqlite(connection.ConnectionString).AddInterceptors(DurableConnection.Instance, AppendOnly.Instance);
    }

    /// <summary>Makes the file where it is missing, brings it to the present layout and switches to write-ahead logging.</summary>
    /// <remarks>Write-ahead logging lets screens read while a file is imported; it stays switched on in the file.</remarks>
    public static async Task PrepareAsync(this IDbContextFactory<WearDb> factory, CancellationToken ct = default)
    {
        await using var db = await factory.CreateDbContextAsync(ct);
        await db.Database.MigrateAsync(ct);
        await db.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = WAL", ct);
    }
}
