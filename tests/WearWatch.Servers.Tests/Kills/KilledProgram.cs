using System.Diagnostics;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Tests;

namespace WearWatch.Servers.Tests.Kills;

/// <summary>
/// <c>wearwatch</c> on a data folder of its own, one command after the other, each in a process that can be killed.
/// </summary>
internal sealed class KilledProgram : IAsyncDisposable
{
    private static readonly TimeSpan patience = TimeSpan.FromMinutes(3);

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wear-kills");
    private readonly StoreUnderTest? postgres;

    private KilledProgram(StoreUnderTest? postgres) => this.postgres = postgres;

    public string Data => At("data");

    /// <summary>What a host in this process is to have set, to work on the same memory.</summary>
    public IReadOnlyDictionary<string, string?> Settings => new Dictionary<string, string?>
    {
        ["WearWatch:DataFolder"] = Data,
        ["WearWatch:Database"] = postgres?.Database ?? "",
    };

    private string InboxFolder => Path.Combine(Data, "inbox");

    /// <summary>One that keeps its memory in PostgreSQL, or in SQLite in its data folder.</summary>
    public static async Task<KilledProgram> OnAsync(bool postgres) =>
        new(postgres ? await StoreUnderTest.MakeAsync() : null);

    public WearDb Db() =>
        (postgres?.Store ?? WearStore.InSqlite(Path.Combine(Data, "wearwatch.db"))).CreateDbContext();

    /// <summary>A path beside the data folder.</summary>
    public string At(params string[] path) => Path.Combine([folder.FullName, .. path]);

    /// <summary>Starts a command on the data folder.</summary>
    public Process Start(params string[] words)
    {
        Directory.CreateDirectory(Data);
        var start = new ProcessStartInfo(
            "dotnet", [Path.Combine(AppContext.BaseDirectory, "WearWatch.Worker.dll"), .. words, "--data", Data])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["WearWatch__InboxEvery"] = "00:00:00.1";
        if (postgres is not null) start.Environment["WearWatch__Database"] = postgres.Database;
        return Process.Start(start)!;
    }

    /// <summary>Runs a command to its end, which is to be a good one, and gives what it wrote.</summary>
    public async Task<string> RunAsync(params string[] words)
    {
        using var process = Start(words);
        var faults = process.StandardError.ReadToEndAsync();
        var output = await process.StandardOutput.ReadToEndAsync();
        using var late = new CancellationTokenSource(patience);
        try
        {
            await process.WaitForExitAsync(late.Token);
        }
        finally
        {
            if (!process.HasExited) process.Kill(entireProcessTree: true);
        }

        Assert.True(process.ExitCode == 0, $"{string.Join(' ', words)}: {process.ExitCode}\n{output}\n{await faults}");
        return output;
    }

    /// <summary>Starts a command and ends it after a time by signal 9.</summary>
    /// <returns>Whether it was still at work then, and what it had written.</returns>
    public async Task<(bool WasAtWork, string Output)> KillAsync(TimeSpan after, params string[] words)
    {
        using var process = Start(words);
        _ = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        var ended = process.WaitForExitAsync();
        var wasAtWork = await Task.WhenAny(ended, Task.Delay(after)) != ended;
        if (wasAtWork) process.Kill(entireProcessTree: true);
        await ended;
        return (wasAtWork, await output);
    }

    /// <summary>Drops a file into the inbox as a careful sender does: written under another name, then renamed.</summary>
    public async Task DropAsync(string name, string text)
    {
        Directory.CreateDirectory(InboxFolder);
        var path = Path.Combine(InboxFolder, name);
        await File.WriteAllTextAsync(path + ".part", text);
        File.Move(path + ".part", path);
    }

    /// <summary>The names of the files of the inbox that were taken in and put away.</summary>
    public IReadOnlyList<string> PutAway() =>
        Path.Combine(InboxFolder, "done") is var done && Directory.Exists(done)
            ? [.. Directory.GetFiles(done, "*.csv").Select(path => Path.GetFileName(path)!)]
            : [];

    public async ValueTask DisposeAsync()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        if (postgres is not null) await postgres.DisposeAsync();
        folder.Delete(recursive: true);
    }
}
