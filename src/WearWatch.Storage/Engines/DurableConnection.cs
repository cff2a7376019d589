using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace WearWatch.Storage.Engines;

/// <summary>Sets on every connection what makes an acknowledged reading survive a killed process and a power cut.</summary>
/// <remarks>
/// <c>synchronous = FULL</c> syncs the write-ahead log at each commit: with the default NORMAL of many builds a power cut may
/// lose the last commits. These settings belong to a connection, not to the file, so they are set each time one opens.
/// </remarks>
public sealed class DurableConnection : DbConnectionInterceptor
{
    private static readonly string Settings = string.Create(CultureInfo.InvariantCulture,
        $"PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; "
        + $"PRAGMA busy_timeout = {WearStore.BusyTimeout.TotalMilliseconds:0};");

    private DurableConnection()
    {
    }

    public static DurableConnection Instance { get; } = new();

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Settings;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Settings;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
