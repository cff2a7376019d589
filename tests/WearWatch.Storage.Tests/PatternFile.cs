using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Tests;

/// <summary>A SQLite file with the present tables, made once by the migrations.</summary>
/// <remarks>Each test gets a copy, which costs a tenth of making the tables.</remarks>
internal static class PatternFile
{
    private static readonly Lazy<byte[]> Pattern = new(() => MakeAsync().GetAwaiter().GetResult());

    /// <summary>Makes a file with the tables; one that is there already stays as it is.</summary>
    public static void CopyTo(string path)
    {
        if (!File.Exists(path)) File.WriteAllBytes(path, Pattern.Value);
    }

    private static async Task<byte[]> MakeAsync()
    {
        var folder = Directory.CreateTempSubdirectory("wear-pattern");
        var path = Path.Combine(folder.FullName, "wearwatch.db");
        var store = WearStore.InSqlite(path);
        await store.PrepareAsync().ConfigureAwait(false);
        using (var last = new SqliteConnection(store.CreateDbContext().Database.GetConnectionString()))
            SqliteConnection.ClearPool(last); // the last connection that closes moves the log into the file
        var pattern = await File.ReadAllBytesAsync(path).ConfigureAwait(false);
        folder.Delete(recursive: true);
        return pattern;
    }
}
