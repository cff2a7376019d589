using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Safekeeping;

/// <summary>
/// Looks through a memory: the engine's own check of its pages, what refers to nothing, and every row of every table.
/// </summary>
public static class Check
{
    private const int FaultsTold = 20;

    /// <summary>A file such as a backup; it is opened to be read only.</summary>
    public static async Task<Checked> FileAsync(string path, CancellationToken ct = default)
    {
        try
        {
            await using var connection = new SqliteConnection(Address(path) + ";Mode=ReadOnly");
            await connection.OpenAsync(ct);
            List<string> faults = [.. (await ColumnAsync(connection, "PRAGMA integrity_check", ct)).Where(r => r != "ok")
                .Concat((await ColumnAsync(connection, "PRAGMA foreign_key_check", ct)).Select(t =>
                    $"A row of {t} refers to nothing."))
                .Take(FaultsTold)];
            return new Checked(path, await CountAsync(connection, ct), faults);
        }
        catch (SqliteException e)
        {
            return new Checked(path, new Dictionary<string, long>(), [$"{path} cannot be read: {e.Message}"]);
        }
    }

    /// <summary>
    /// The memory that is in use; of PostgreSQL every row is read, its pages are checked by its own pg_amcheck.
    /// </summary>
    public static async Task<Checked> MemoryAsync(WearStore store, CancellationToken ct = default)
    {
        await using var db = store.CreateDbContext();
        if (store.Postgres is null) return await FileAsync(db.Database.GetDbConnection().DataSource, ct);
        Dictionary<string, long> rows = [];
        foreach (var table in MemoryCopy.InOrder(db.Model).Select(t => t.GetTableName()!))
        {
#pragma warning disable EF1002, EF1003 // the names come from the model
            rows[table] = await db.Database.SqlQueryRaw<long>($"SELECT COUNT(t.*) AS \"Value\" FROM \"{table}\" AS t")
                .SingleAsync(ct);
#pragma warning restore EF1002, EF1003
        }

        return new Checked(db.Database.GetDbConnection().Database, rows, []);
    }

    internal static string Address(string path) =>
        new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString();

    private static async Task<Dictionary<string, long>> CountAsync(SqliteConnection connection, CancellationToken ct)
    {
        Dictionary<string, long> rows = [];
        foreach (var table in await ColumnAsync(
            connection, "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name", ct))
        {
            rows[table] = long.Parse(
                (await ColumnAsync(connection, $"SELECT COUNT(*) FROM \"{table}\"", ct))[0],
                System.Globalization.CultureInfo.InvariantCulture);
        }

        return rows;
    }

    private static async Task<List<string>> ColumnAsync(SqliteConnection connection, string sql, CancellationToken ct)
    {
        await using var command = connection.CreateCommand();
#pragma warning disable CA2100 // fixed questions, and names that the database itself told
        command.CommandText = sql;
#pragma warning restore CA2100
        List<string> values = [];
        await using var reader = await command.ExecuteReaderAsync(ct);
        while (await reader.ReadAsync(ct)) values.Add(reader.GetString(0));
        return values;
    }
}
