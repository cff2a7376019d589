using Microsoft.EntityFrameworkCore;

namespace WearWatch.Storage.Engines;

/// <summary>Brings a memory in SQLite to the present layout, one process at a time, and keeps it as it was before.</summary>
/// <remarks>
/// EF takes its turn by a row in the memory, which outlives a process that is killed: every later start would wait for ever. A
/// lock of the system ends with its process, and who has it may clear that row away. PostgreSQL has locks that end by themselves.
/// </remarks>
internal static class SqliteUpgrade
{
    private static readonly TimeSpan betweenTries = TimeSpan.FromMilliseconds(100);

    /// <summary>Waits for the turn and upgrades what is not yet at the present layout.</summary>
    public static async Task RunAsync(WearDb db, CancellationToken ct)
    {
        using var turn = await TakeTurnAsync(db.Database.GetDbConnection().DataSource + "-upgrade", ct);
        await db.Database.ExecuteSqlRawAsync("DROP TABLE IF EXISTS __EFMigrationsLock", ct);
        await BeforeUpgrade.KeepAsync(db, ct);
        await db.Database.MigrateAsync(ct);
    }

    private static async Task<FileStream> TakeTurnAsync(string path, CancellationToken ct)
    {
        while (true)
        {
            try
            {
                ClosedFile.Make(path);
                return new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException taken) when (IsTaken(taken))
            {
                await Task.Delay(betweenTries, ct);
            }
        }
    }

    /// <summary>EWOULDBLOCK of Linux and of macOS, ERROR_SHARING_VIOLATION of Windows.</summary>
    private static bool IsTaken(IOException fault) => fault.HResult is 11 or 35 or unchecked((int)0x80070020);
}
