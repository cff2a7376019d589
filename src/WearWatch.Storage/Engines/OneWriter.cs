using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace WearWatch.Storage.Engines;

/// <summary>Lets one transaction write at a time in PostgreSQL, over all processes, as SQLite does of its own.</summary>
/// <remarks>
/// The desks look before they write: is the key known, is the card still as it was read, which forecast is the newest. They may,
/// since nobody writes between the look and the commit. It also makes ids grow in the order of commits, on which
/// <see cref="RawStamp"/> rests. The lock ends with its transaction, whatever becomes of the process. Readers never wait for it.
/// </remarks>
public sealed class OneWriter : DbTransactionInterceptor
{
    /// <summary>Any number that no other user of the database takes.</summary>
    private const string TakeTurn = "SELECT pg_advisory_xact_lock(5760112)";

    private OneWriter()
    {
    }

    public static OneWriter Instance { get; } = new();

    public override DbTransaction TransactionStarted(
        DbConnection connection, TransactionEndEventData eventData, DbTransaction result)
    {
        using var command = Command(connection, result);
        command.ExecuteNonQuery();
        return result;
    }

    public override async ValueTask<DbTransaction> TransactionStartedAsync(
        DbConnection connection, TransactionEndEventData eventData, DbTransaction result, CancellationToken cancellationToken =
            default)
    {
        await using var command = Command(connection, result);
        await command.ExecuteNonQueryAsync(cancellationToken);
        return result;
    }

    private static DbCommand Command(DbConnection connection, DbTransaction transaction)
    {
        var command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = TakeTurn;
        return command;
    }
}
