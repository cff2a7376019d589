using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Tests;

/// <summary>A SQLite file, thrown away after the test. The same tests run on PostgreSQL in WearWatch.Servers.Tests.</summary>
internal sealed class StoreUnderTest : IAsyncDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wear-db");

    private StoreUnderTest()
    {
    }

    /// <summary>
    /// The setting <c>WearWatch:Database</c> that makes a plant use it; empty, since a plant makes its own file.
    /// </summary>
    public string Database { get; } = "";

    public WearStore Store => WearStore.InSqlite(OwnFile);

    private string OwnFile => Path.Combine(folder.FullName, "wearwatch.db");

    public static Task<StoreUnderTest> MakeAsync()
    {
        var under = new StoreUnderTest();
        Fill(under.OwnFile);
        return Task.FromResult(under);
    }

    /// <summary>Makes one without any table, as a program's very first start finds it.</summary>
    public static Task<StoreUnderTest> MakeEmptyAsync() => Task.FromResult(new StoreUnderTest());

    /// <summary>Makes a plant's own file, with the present tables.</summary>
    public static void Fill(string path) => PatternFile.CopyTo(path);

    public ValueTask DisposeAsync()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
        return ValueTask.CompletedTask;
    }
}
