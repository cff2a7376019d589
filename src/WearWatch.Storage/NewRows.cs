using System.Data.Common;
using System.Globalization;
using System.Linq.Expressions;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace WearWatch.Storage;

/// <summary>Adds the rows that are new and leaves those that are there: what makes a second delivery change nothing.</summary>
/// <remarks>The statements are plain SQL that SQLite and PostgreSQL both know. Rows are not tracked and do not learn their ids.</remarks>
public static class NewRows
{
    /// <summary>SQLite takes at most 32,766 parameters in a statement, and a plan that is not too long is found faster.</summary>
    private const int RowsAtOnce = 100;

    /// <summary>Adds rows inside the current transaction, except those whose key is there already.</summary>
    /// <param name="db">The plant's memory, in a transaction.</param>
    /// <param name="rows">The rows; keys may repeat among them.</param>
    /// <param name="key">The property that is unique in the table.</param>
    /// <param name="ct">Stops it.</param>
    /// <returns>The keys of the rows that were added.</returns>
    public static async Task<IReadOnlySet<TKey>> AddNewAsync<T, TKey>(
        this WearDb db, IReadOnlyCollection<T> rows, Expression<Func<T, TKey>> key, CancellationToken ct = default)
        where T : class
        where TKey : notnull
    {
        var entity = db.Model.FindEntityType(typeof(T))!;
        var unique = entity.FindProperty(((MemberExpression)key.Body).Member.Name)!.GetColumnName();
        var added = new HashSet<TKey>();
        foreach (var some in rows.Chunk(RowsAtOnce))
        {
            await using var command = Insert(db, entity, some, $"ON CONFLICT (\"{unique}\") DO NOTHING RETURNING \"{unique}\"");
            await using var reader = await command.ExecuteReaderAsync(ct);
            while (await reader.ReadAsync(ct)) added.Add(await reader.GetFieldValueAsync<TKey>(0, ct));
        }

        return added;
    }

    /// <summary>Adds rows inside the current transaction; where the primary key is there already, what stands is brought together with what comes.</summary>
    /// <param name="db">The plant's memory, in a transaction.</param>
    /// <param name="rows">The rows, each primary key once, in the order of their keys so that two writers never wait for each other.</param>
    /// <param name="together">Per column the SQL of its new value, with <c>old.</c> and <c>excluded.</c> before a quoted column.</param>
    /// <param name="ct">Stops it.</param>
    public static async Task MergeAsync<T>(
        this WearDb db, IReadOnlyCollection<T> rows, IReadOnlyDictionary<string, string> together, CancellationToken ct = default)
        where T : class
    {
        var entity = db.Model.FindEntityType(typeof(T))!;
        var keys = string.Join(", ", entity.FindPrimaryKey()!.Properties.Select(p => $"\"{p.GetColumnName()}\""));
        var set = string.Join(", ", together.Select(column => $"\"{column.Key}\" = {column.Value}"));
        foreach (var some in rows.Chunk(RowsAtOnce))
        {
            await using var command = Insert(db, entity, some, $"ON CONFLICT ({keys}) DO UPDATE SET {set}");
            await command.ExecuteNonQueryAsync(ct);
        }
    }

    private static DbCommand Insert<T>(WearDb db, IEntityType entity, T[] rows, string onConflict)
        where T : class
    {
        var transaction = db.Database.CurrentTransaction
            ?? throw new InvalidOperationException("Rows are added inside a transaction, so that all of them are or none.");
        var columns = entity.GetProperties().Where(p => p.ValueGenerated == ValueGenerated.Never).ToList();
        var command = db.Database.GetDbConnection().CreateCommand();
        command.Transaction = transaction.GetDbTransaction();
        var values = new StringBuilder();
        for (var i = 0; i < rows.Length; i++)
        {
            values.Append(i == 0 ? "(" : ", (");
            for (var c = 0; c < columns.Count; c++)
            {
                var name = string.Create(CultureInfo.InvariantCulture, $"@p{i}_{c}");
                values.Append(c == 0 ? "" : ", ").Append(name);
                var parameter = columns[c].GetRelationalTypeMapping().CreateParameter(command, name, columns[c].GetGetter().GetClrValue(rows[i]), columns[c].IsNullable);
                command.Parameters.Add(parameter);
            }

            values.Append(')');
        }

#pragma warning disable CA2100 // the names come from the model, the values go in as parameters
        command.CommandText =
            $"INSERT INTO \"{entity.GetTableName()}\" AS old ({string.Join(", ", columns.Select(c => $"\"{c.GetColumnName()}\""))}) VALUES {values} {onConflict}";
#pragma warning restore CA2100
        return command;
    }
}
