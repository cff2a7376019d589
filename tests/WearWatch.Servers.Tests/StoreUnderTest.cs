using WearWatch.Servers.Tests.Servers;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Tests;

/// <summary>A database in a real PostgreSQL, thrown away after the test.</summary>
internal sealed class StoreUnderTest : IAsyncDisposable
{
    private readonly PostgresServer server;

    private StoreUnderTest(PostgresServer server, string database) => (this.server, Database) = (server, database);

    /// <summary>The setting <c>WearWatch:Database</c> that makes a plant use it.</summary>
    public string Database { get; }

    public WearStore Store => WearStore.InPostgres(Database);

    public static Task<StoreUnderTest> MakeAsync() => MakeAsync(server => server.NewDatabaseAsync());

    /// <summary>Makes one without any table, as a program's very first start finds it.</summary>
    public static Task<StoreUnderTest> MakeEmptyAsync() => MakeAsync(server => server.EmptyDatabaseAsync());

    /// <summary>A plant has no file of its own here; its database has its tables already.</summary>
    public static void Fill(string path) => _ = path;

    public async ValueTask DisposeAsync() => await server.DropAsync(Database);

    private static async Task<StoreUnderTest> MakeAsync(Func<PostgresServer, Task<string>> make)
    {
        var server = await TestContext.Current.GetFixture<PostgresServer>()
            ?? throw new InvalidOperationException("PostgreSQL was not started.");
        return new StoreUnderTest(server, await make(server));
    }
}
