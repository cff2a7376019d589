using System.Diagnostics;
using Npgsql;
using WearWatch.Servers.Tests.Servers;
using WearWatch.Storage.Engines;

[assembly: AssemblyFixture(typeof(PostgresServer))]

namespace WearWatch.Servers.Tests.Servers;

/// <summary>A real PostgreSQL 15 of the tests' own, and in it a new database for each test that asks.</summary>
public sealed class PostgresServer : IAsyncLifetime
{
    private const string Programs = "/usr/lib/postgresql/15/bin";

    /// <summary>Filled with the tables once; new databases are copies of it.</summary>
    private const string Pattern = "pattern";

    /// <summary>
    /// Of a server that nobody kills: a disk need not keep it. Each database is a thousand files, and to make and delete them on
    /// a disk took a third of the processor time of these tests.
    /// </summary>
    private static readonly string[] ForgetsAtPowerCut =
        ["-c", "fsync=off", "-c", "synchronous_commit=off", "-c", "full_page_writes=off", "-c", "max_wal_size=256MB"];

    private readonly DirectoryInfo folder;
    private readonly int port = FreePort.Find();
    private readonly ServerProcess server;
    private int made;

    /// <summary>The one that tests share.</summary>
    public PostgresServer()
        : this(InMemory() ?? Directory.CreateTempSubdirectory("wear-postgres"), ForgetsAtPowerCut)
    {
    }

    private PostgresServer(DirectoryInfo folder, IEnumerable<string> settings)
    {
        this.folder = folder;
        server = new ServerProcess("PostgreSQL 15", [
            .. AsPostgres, $"{Programs}/postgres", "-D", Data, "-p", $"{port}", "-c", "listen_addresses=127.0.0.1",
            "-c", "unix_socket_directories=", "-c", "max_connections=200", .. settings,
        ], AnswersAsync);
    }

    /// <summary>PostgreSQL refuses to run as root: there it runs as the user that its package made.</summary>
    private static string[] AsPostgres =>
        Environment.UserName == "root" ? ["setpriv", "--reuid=postgres", "--regid=postgres", "--clear-groups"] : [];

    private string Data => Path.Combine(folder.FullName, "data");

    public async ValueTask InitializeAsync()
    {
        if (!File.Exists($"{Programs}/initdb"))
            throw new InvalidOperationException("PostgreSQL 15 is not installed. tests/run installs it.");
        if (AsPostgres.Length > 0) await RunAsync("chown", "postgres:postgres", folder.FullName);
        await RunAsync([.. AsPostgres, $"{Programs}/initdb", "-D", Data, "-U", "postgres", "-A", "trust", "-E", "UTF8",
            "--locale=C.UTF-8", "--no-sync"]);
        await server.StartAsync();
        await SayAsync($"CREATE DATABASE {Pattern}");
        await WearStore.InPostgres(Connection(Pattern)).PrepareAsync();
        Forget(Pattern);
    }

    /// <summary>One of a test's own on disk, as a plant has it: it may be killed.</summary>
    internal static PostgresServer OnDisk() => new(Directory.CreateTempSubdirectory("wear-postgres"), []);

    /// <summary>Makes a database with the present tables and gives its connection string.</summary>
    public Task<string> NewDatabaseAsync() => NewDatabaseAsync(Pattern);

    /// <summary>Makes a database without any table and gives its connection string.</summary>
    public Task<string> EmptyDatabaseAsync() => NewDatabaseAsync("template1");

    /// <summary>Throws a database away.</summary>
    public async Task DropAsync(string connectionString)
    {
        var name = new NpgsqlConnectionStringBuilder(connectionString).Database!;
        Forget(name);
        await SayAsync($"DROP DATABASE {name} WITH (FORCE)");
    }

    /// <summary>Ends it as a power cut would. Only one of <see cref="OnDisk"/>.</summary>
    internal async Task KillAsync(CancellationToken ct = default)
    {
        await server.KillAsync(ct);
        NpgsqlConnection.ClearAllPools(); // what the tests' own process has open is dead
    }

    /// <summary>Starts it again on the same data and port.</summary>
    internal Task StartAsync(CancellationToken ct = default) => server.StartAsync(ct);

    /// <summary>Breaks every connection to a database, as a network or a restart does.</summary>
    public Task BreakConnectionsAsync(string connectionString) => SayAsync(
        $"SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = "
        + $"'{new NpgsqlConnectionStringBuilder(connectionString).Database}'");

    public async ValueTask DisposeAsync()
    {
        NpgsqlConnection.ClearAllPools();
        await server.DisposeAsync();
        folder.Delete(recursive: true);
    }

    private string Connection(string database) => $"Host=127.0.0.1;Port={port};Database={database};Username=postgres";

    private async Task<string> NewDatabaseAsync(string template)
    {
        var name = $"t{Interlocked.Increment(ref made)}";
        await SayAsync($"CREATE DATABASE {name} TEMPLATE {template} STRATEGY FILE_COPY");
        return Connection(name);
    }

    /// <summary>A folder in memory; null where the machine gives too little for that, as containers often do.</summary>
    private static DirectoryInfo? InMemory()
    {
        const string memory = "/dev/shm";
        if (!Directory.Exists(memory) || new DriveInfo(memory).AvailableFreeSpace < 2L << 30) return null;
        return Directory.CreateDirectory(Path.Combine(memory, $"wear-postgres-{Environment.ProcessId}"));
    }

    private void Forget(string database)
    {
        using var any = new NpgsqlConnection(WearStore.InPostgres(Connection(database)).Postgres);
        NpgsqlConnection.ClearPool(any);
    }

    private async Task SayAsync(string statement)
    {
        await using var connection = new NpgsqlConnection(Connection("postgres"));
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the names are made here
        command.CommandText = statement;
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }

    private async Task<bool> AnswersAsync(CancellationToken ct)
    {
        try
        {
            await using var connection = new NpgsqlConnection(Connection("postgres") + ";Pooling=false");
            await connection.OpenAsync(ct);
            return true;
        }
        catch (NpgsqlException)
        {
            return false;
        }
    }

    private static async Task RunAsync(params string[] command)
    {
        using var process = Process.Start(
            new ProcessStartInfo(command[0], command[1..]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var said = process.StandardError.ReadToEndAsync();
        await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        if (process.ExitCode != 0) throw new InvalidOperationException($"{command[0]} failed: {await said}");
    }
}
