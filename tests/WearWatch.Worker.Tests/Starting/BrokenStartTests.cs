using System.Net.Sockets;
using System.Runtime.Versioning;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Engines;
using WearWatch.Worker.Commands;
using WearWatch.Worker.Starting;

namespace WearWatch.Worker.Tests.Starting;

/// <summary>A start that cannot be is told in two lines, with the exit code of its kind.</summary>
public sealed class BrokenStartTests : IDisposable
{
    private readonly DirectoryInfo root = Directory.CreateTempSubdirectory("wear-start");

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private string Data => Path.Combine(root.FullName, "data");

    private string Database => Path.Combine(Data, "wearwatch.db");

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        if (!OperatingSystem.IsWindows() && Directory.Exists(Data))
            File.SetUnixFileMode(Data, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        root.Delete(recursive: true);
    }

    [Fact]
    public async Task A_database_of_garbage_is_told_and_left_as_it_is()
    {
        Directory.CreateDirectory(Data);
        await File.WriteAllTextAsync(Database, string.Concat(Enumerable.Repeat("no database at all ", 500)), Ct);
        var before = await File.ReadAllBytesAsync(Database, Ct);
        await AssertToldAsync(ExitCode.DatabaseDamaged, "is damaged, or is no database", "wearwatch restore");
        Assert.Equal(before, await File.ReadAllBytesAsync(Database, Ct));
    }

    [Fact]
    public async Task A_database_of_a_newer_program_is_refused_and_left_as_it_is()
    {
        Directory.CreateDirectory(Data);
        var store = WearStore.InSqlite(Database, pooling: false);
        await store.PrepareAsync(Ct);
        await using (var db = store.CreateDbContext())
        {
            await db.Database.ExecuteSqlRawAsync(
                "INSERT INTO __EFMigrationsHistory (MigrationId, ProductVersion) VALUES ('29990101000000_Later', '99')", Ct);
        }

        await AssertToldAsync(ExitCode.DatabaseNewer, "29990101000000_Later", "Run the newer program");
    }

    [Fact]
    public async Task A_folder_that_another_worker_has_is_told()
    {
        using var other = new FolderHold(new DataFolder(Data));
        other.Take();
        await AssertToldAsync(ExitCode.FolderTaken, "Another WearWatch works on", "data folder of its own", "serve");
    }

    // Root may read everything, so what the system says then is said here.
    [Fact]
    public void Each_kind_of_fault_has_its_code_and_what_to_do()
    {
        (Exception Error, int Code)[] kinds =
        [
            (new UnauthorizedAccessException("Access to the path is denied."), ExitCode.NoRights),
            (new SqliteException("unable to open database file", 14), ExitCode.NoRights),
            (new SqliteException("attempt to write a readonly database", 8), ExitCode.NoRights),
            (new SqliteException("database disk image is malformed", 11), ExitCode.DatabaseDamaged),
            (new DbUpdateException("x", new SqliteException("database or disk is full", 13)), ExitCode.DiskFull),
            (new IOException("x", 28), ExitCode.DiskFull),
            (new IOException("x", new SocketException((int)SocketError.AddressAlreadyInUse)), ExitCode.AddressTaken),
            (new SocketException((int)SocketError.AccessDenied), ExitCode.NoRights),
            (new Npgsql.NpgsqlException("Failed to connect"), ExitCode.DatabaseAway),
            (new FormatException("WearWatch:TrustedProxies: 'x'"), ExitCode.SettingsWrong),
        ];
        foreach (var (error, code) in kinds)
        {
            var broken = Assert.IsType<BrokenStart>(BrokenStart.Of(error));
            Assert.Equal(code, broken.Code);
            Assert.Equal(2, broken.ToString().Split(Environment.NewLine).Length);
        }

        Assert.Null(BrokenStart.Of(new InvalidOperationException("a mistake of ours")));
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public async Task The_data_folder_and_the_database_are_for_their_own_user_only()
    {
        if (OperatingSystem.IsWindows()) Assert.Skip("Rights of Unix.");
        Directory.CreateDirectory(Data, (UnixFileMode)0b111_101_101); // as an older program left it
        await File.WriteAllBytesAsync(Database, [], Ct);
        File.SetUnixFileMode(Database, (UnixFileMode)0b110_100_100);
        var folder = new DataFolder(Data);
        await WearStore.InSqlite(folder.Database, pooling: false).PrepareAsync(Ct);
        Assert.Equal(UnixFileMode.None, File.GetUnixFileMode(Data) & (UnixFileMode)0b000_000_111);
        Assert.Equal((UnixFileMode)0b110_000_000, File.GetUnixFileMode(Database));
        Assert.Equal((UnixFileMode)0b111_000_000, File.GetUnixFileMode(new DataFolder(Path.Combine(root.FullName, "new")).Root));
    }

    private async Task AssertToldAsync(int code, string what, string toDo, string command = "export")
    {
        using var error = new StringWriter();
        List<string> line = [command, "--data", Data];
        if (command == "export") line.Insert(1, Path.Combine(root.FullName, "out"));
        Assert.Equal(code, await CommandLine.RunAsync(line, TextWriter.Null, error));
        string[] told = error.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, told.Length);
        Assert.Contains(what, told[0], StringComparison.Ordinal);
        Assert.Contains(toDo, told[1], StringComparison.Ordinal);
    }
}
