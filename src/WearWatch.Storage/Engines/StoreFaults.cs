using Microsoft.Data.Sqlite;
using Npgsql;

namespace WearWatch.Storage.Engines;

/// <summary>Tells faults of the memory from mistakes.</summary>
public static class StoreFaults
{
    private const int OutOfSpaceOnUnix = 28; // ENOSPC
    private const int OutOfSpaceOnWindows = unchecked((int)0x80070070); // ERROR_DISK_FULL
    private const string ClassOfConnections = "08";
    private const string DiskFull = "53100";

    /// <summary>The fault behind an error.</summary>
    public static StoreFault Of(Exception? error)
    {
        for (; error is not null; error = error.InnerException)
        {
            if (One(error) is var fault and not StoreFault.None) return fault;
        }

        return StoreFault.None;
    }

    private static StoreFault One(Exception error) => error switch
    {
        NewerLayoutException => StoreFault.Newer,
        SqliteException sqlite => OfSqlite(sqlite.SqliteErrorCode), // result codes of sqlite.org/rescode.html
        PostgresException { SqlState: DiskFull } => StoreFault.Full,
        PostgresException { SqlState: "28P01" or "28000" or "42501" } => StoreFault.NoRights,
        PostgresException { IsTransient: false, SqlState: var state }
            when !state.StartsWith(ClassOfConnections, StringComparison.Ordinal) => StoreFault.None,
        NpgsqlException => StoreFault.Away,
        UnauthorizedAccessException => StoreFault.NoRights,
        IOException { HResult: OutOfSpaceOnUnix or OutOfSpaceOnWindows } => StoreFault.Full,
        _ => StoreFault.None,
    };

    private static StoreFault OfSqlite(int code) => code switch
    {
        13 => StoreFault.Full,
        5 or 6 or 10 => StoreFault.Away,
        3 or 8 or 14 or 23 => StoreFault.NoRights,
        11 or 26 => StoreFault.Damaged,
        _ => StoreFault.None,
    };
}
