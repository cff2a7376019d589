using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace WearWatch.Storage.Engines;

/// <summary>Keeps a memory as it was before it is brought to a newer layout, beside it.</summary>
/// <remarks>Of PostgreSQL an older layout is kept by the server's own tools; docs/operating.md says how.</remarks>
internal static class BeforeUpgrade
{
    /// <summary>Keeps it, unless it is new or at the present layout.</summary>
    public static async Task KeepAsync(WearDb db, CancellationToken ct)
    {
        if ((await db.Database.GetAppliedMigrationsAsync(ct)).LastOrDefault() is not { } layout) return;
        if (!(await db.Database.GetPendingMigrationsAsync(ct)).Any()) return;
        var source = db.Database.GetDbConnection().DataSource;
        var copy = Path.Combine(Path.GetDirectoryName(source)!, $"before-upgrade-from-{layout}.db");
        if (File.Exists(copy)) return;
        var unfinished = copy + ".unfinished";
        File.Delete(unfinished);
        ClosedFile.Make(unfinished);
        await db.Database.OpenConnectionAsync(ct);
        await using (var to = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = unfinished, Pooling = false }.ToString()))
        {
            await to.OpenAsync(ct);
            ((SqliteConnection)db.Database.GetDbConnection()).BackupDatabase(to);
        }

        await db.Database.CloseConnectionAsync();
        File.Move(unfinished, copy);
    }
}
