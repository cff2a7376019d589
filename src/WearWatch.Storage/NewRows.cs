using System.Data.Common;
using System.Globalization;
using System.Linq.Expressions;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage;

/// <summary>Adds the rows that are new and leaves those that are there: what makes a second delivery change nothing.</summary>
/// <remarks>
/// The statements are plain SQL that SQLite and PostgreSQL both know. Rows are not tracked and do not learn their ids.
/// </remarks>
public static class NewRows
{
    /// <summary>
    /// SQLite lives in this process and is fastest with a short statement made once; to PostgreSQL each statement is a way there
    /// and back.
    /// </summary>
    private static int RowsAtOnce(WearDb db) => db.Database.IsSqlite() ? 1 : 200;

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
        await InsertAsync(db, entity, rows, $"ON CONFLICT (\"{unique}\") DO NOTHING RETURNING \"{unique}\"", async command =>
        {
            await using var reader = await command.ExecuteReaderAsync(ct);
            while (await reader.ReadAsync(ct)) added.Add(await reader.GetFieldValueAsync<TKey>(0, ct));
        });
        return added;
    }

    /// <summary>
    /// Adds rows inside the current transaction; where the primary key is there already, what stands is brought together with
    /// what comes.
    /// </summary>
    /// <param name="db">The plant's memory, in a transaction.</param>
    /// <param name="rows">
    /// The rows, each primary key once, in the order of their keys so that two writers never wait for each other.
    /// </param>
    /// <param name="together">
    /// Per column the SQL of its new value, with <c>old.</c> and <c>excluded.</c> before a quoted column.
    /// </param>
    /// <param name="ct">Stops it.</param>
    public static async Task MergeAsync<T>(
        this WearDb db, IReadOnlyCollection<T> rows, IReadOnlyDictionary<string, string> together, CancellationToken ct = default)
        where T : class
    {
        var entity = db.Model.FindEntityType(typeof(T))!;
        var keys = string.Join(", ", entity.FindPrimaryKey()!.Properties.Select(p => $"\"{p.GetColumnName()}\""));
        var set = string.Join(", ", together.Select(column => $"\"{column.Key}\" = {column.Value}"));
        await InsertAsync(
            db, entity, rows, $"ON CONFLICT ({keys}) DO UPDATE SET {set}", command => command.ExecuteNonQueryAsync(ct));
    }

    /// <summary>Inserts rows some at a time; statements of one length are made once.</summary>
    private static async Task InsertAsync<T>(
        WearDb db, IEntityType entity, IReadOnlyCollection<T> rows, string onConflict, Func<DbCommand, Task> run)
        where T : class
    {
        var columns = Column<T>.Of(entity);
        DbCommand? command = null;
        foreach (var some in rows.Chunk(RowsAtOnce(db)))
        {
            if (command?.Parameters.Count != some.Length * columns.Count)
            {
                if (command is not null) await command.DisposeAsync();
                command = Insert(db, entity, columns, some.Length, onConflict);
            }

            for (var i = 0; i < command.Parameters.Count; i++)
                command.Parameters[i].Value = columns[i % columns.Count].Of(some[i / columns.Count]) ?? DBNull.Value;
            await run(command);
        }

        if (command is not null) await command.DisposeAsync();
    }

    private static DbCommand Insert<T>(WearDb db, IEntityType entity, List<Column<T>> columns, int rows, string onConflict)
    {
        var transaction = db.Database.CurrentTransaction
            ?? throw new InvalidOperationException("Rows are added inside a transaction, so that all of them are or none.");
        var command = db.Database.GetDbConnection().CreateCommand();
        command.Transaction = transaction.GetDbTransaction();
        var values = new StringBuilder();
        for (var i = 0; i < rows; i++)
        {
            values.Append(i == 0 ? "(" : ", (");
            for (var c = 0; c < columns.Count; c++)
            {
                var name = string.Create(CultureInfo.InvariantCulture, $"@p{i}_{c}");
                values.Append(c == 0 ? "" : ", ").Append(name);
                command.Parameters.Add(columns[c].Mapping.CreateParameter(command, name, null, nullable: true));
            }

            values.Append(')');
        }

#pragma warning disable CA2100 // the names come from the model, the values go in as parameters
        command.CommandText =
            $"INSERT INTO \"{entity.GetTableName()}\" AS old ({string.Join(", ", columns.Select(c => $"\"{c.Name}\""))}) VALUES "
            + $"{values} {onConflict}";
#pragma warning restore CA2100
        return command;
    }
}
