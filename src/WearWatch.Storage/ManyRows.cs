using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace WearWatch.Storage;

/// <summary>Adds many rows with one prepared statement, several times as fast as change tracking does: imports have a million of them.</summary>
public static class ManyRows
{
    /// <summary>Adds rows inside the current transaction. They are not tracked and do not learn their ids.</summary>
    public static async Task AddManyAsync<T>(this WearDb db, IReadOnlyCollection<T> rows, CancellationToken ct = default)
        where T : class
    {
        if (rows.Count == 0) return;
        var transaction = db.Database.CurrentTransaction
            ?? throw new InvalidOperationException("Many rows are added inside a transaction, so that all of them are or none.");
        var entity = db.Model.FindEntityType(typeof(T))!;
        var columns = entity.GetProperties().Where(p => p.ValueGenerated == ValueGenerated.Never).ToList();
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.Transaction = transaction.GetDbTransaction();
#pragma warning disable CA2100 // the names come from the model, the values go in as parameters
        command.CommandText =
            $"INSERT INTO \"{entity.GetTableName()}\" ({string.Join(", ", columns.Select(c => $"\"{c.GetColumnName()}\""))}) " +
            $"VALUES ({string.Join(", ", columns.Select((_, i) => $"@{i}"))})";
#pragma warning restore CA2100
        var values = new (Func<T, object?> Of, System.Data.Common.DbParameter Into)[columns.Count];
        for (var i = 0; i < columns.Count; i++)
        {
            var into = command.CreateParameter();
            into.ParameterName = $"@{i}";
            command.Parameters.Add(into);
            values[i] = (Stored<T>(columns[i]), into);
        }

        await command.PrepareAsync(ct);
        foreach (var row in rows)
        {
            foreach (var (of, into) in values) into.Value = of(row) ?? DBNull.Value;
            await command.ExecuteNonQueryAsync(ct);
        }
    }

    /// <summary>Reads a property as it is stored.</summary>
    private static Func<T, object?> Stored<T>(IProperty property)
        where T : class
    {
        var getter = property.GetGetter();
        return property.GetTypeMapping().Converter is { } converter
            ? row => getter.GetClrValue(row) is { } value ? converter.ConvertToProvider(value) : null
            : row => getter.GetClrValue(row);
    }
}
