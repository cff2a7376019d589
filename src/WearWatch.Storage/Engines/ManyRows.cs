using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using Npgsql;

namespace WearWatch.Storage.Engines;

/// <summary>Adds many rows several times as fast as change tracking does: imports have a million of them.</summary>
public static class ManyRows
{
    /// <summary>Adds rows inside the current transaction. They are not tracked and do not learn their ids.</summary>
    public static async Task AddManyAsync<T>(this WearDb db, IReadOnlyCollection<T> rows, CancellationToken ct = default)
        where T : class
    {
        if (rows.Count == 0) return;
        if (db.Database.CurrentTransaction is null)
            throw new InvalidOperationException("Many rows are added inside a transaction, so that all of them are or none.");
        var entity = db.Model.FindEntityType(typeof(T))!;
        var columns = Column<T>.Of(entity);
        var into = $"\"{entity.GetTableName()}\" ({string.Join(", ", columns.Select(c => $"\"{c.Name}\""))})";
        if (db.Database.GetDbConnection() is NpgsqlConnection postgres) await CopyAsync(postgres, into, columns, rows, ct);
        else await InsertAsync(db, into, columns, rows, ct);
    }

    /// <summary>PostgreSQL takes them as one stream, so that the way to the server is gone once.</summary>
    private static async Task CopyAsync<T>(
        NpgsqlConnection connection, string into, List<Column<T>> columns, IReadOnlyCollection<T> rows, CancellationToken ct)
    {
        await using var copy = await connection.BeginBinaryImportAsync($"COPY {into} FROM STDIN (FORMAT BINARY)", ct);
        foreach (var row in rows)
        {
            await copy.StartRowAsync(ct);
            foreach (var column in columns)
            {
                if (column.Of(row) is { } value) await copy.WriteAsync(value, column.Mapping.StoreTypeNameBase, ct);
                else await copy.WriteNullAsync(ct);
            }
        }

        await copy.CompleteAsync(ct);
    }

    /// <summary>SQLite takes them one by one with a prepared statement: it lives in this process.</summary>
    private static async Task InsertAsync<T>(
        WearDb db, string into, List<Column<T>> columns, IReadOnlyCollection<T> rows, CancellationToken ct)
    {
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.Transaction = db.Database.CurrentTransaction!.GetDbTransaction();
#pragma warning disable CA2100 // the names come from the model, the values go in as parameters
        command.CommandText = $"INSERT INTO {into} VALUES ({string.Join(", ", columns.Select((_, i) => $"@{i}"))})";
#pragma warning restore CA2100
        for (var i = 0; i < columns.Count; i++)
        {
            var parameter = command.CreateParameter();
            parameter.ParameterName = $"@{i}";
            command.Parameters.Add(parameter);
        }

        await command.PrepareAsync(ct);
        foreach (var row in rows)
        {
            for (var i = 0; i < columns.Count; i++) command.Parameters[i].Value = columns[i].Of(row) ?? DBNull.Value;
            await command.ExecuteNonQueryAsync(ct);
        }
    }
}
