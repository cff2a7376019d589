using System.Diagnostics;
using WearWatch.Storage;
using WearWatch.Storage.Engines;

namespace WearWatch.Servers.Tests;

/// <summary><c>wearwatch serve</c> as a process of its own on a data folder, that can be killed and started again.</summary>
/// <param name="postgres">The connection string of a PostgreSQL database to use; null for SQLite in its data folder.</param>
/// <param name="settings">Settings of the section WearWatch, such as <c>Mqtt:Port</c>.</param>
internal sealed class WorkerProcess(string? postgres, params (string Key, string Value)[] settings) : IAsyncDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wear-worker");
    private Process? process;

    public string Data => Path.Combine(folder.FullName, "data");

    private WearStore Store =>
        postgres is null ? WearStore.InSqlite(Path.Combine(Data, "wearwatch.db")) : WearStore.InPostgres(postgres);

    /// <summary>Makes the database with chains of 25.4 mm pitch.</summary>
    public async Task RegisterAsync(IEnumerable<string> chains, CancellationToken ct)
    {
        Directory.CreateDirectory(Data);
        await Store.PrepareAsync(ct);
        await using var db = Db();
        db.Chains.AddRange(chains.Select(name => new Storage.Rows.ChainRow { Name = name, PitchMm = 25.4 }));
        await db.SaveChangesAsync(ct);
    }

    public WearDb Db() => Store.CreateDbContext();

    /// <summary>Starts it; it is ready when its log says that it is connected.</summary>
    public async Task StartAsync(CancellationToken ct)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardError = true, RedirectStandardOutput = true };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "WearWatch.Worker.dll"));
        foreach (var word in new[] { "serve", "--data", Data }) start.ArgumentList.Add(word);
        if (postgres is not null) start.Environment["WearWatch__Database"] = postgres;
        foreach (var (key, value) in settings) start.Environment["WearWatch__"
            + key.Replace(":", "__", StringComparison.Ordinal)] = value;
        var connected = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        process = Process.Start(start)!;
        var said = new List<string>();
        process.ErrorDataReceived += (_, line) =>
        {
            lock (said) said.Add(line.Data ?? "(it ended)");
            if (line.Data?.Contains("MQTT: connected", StringComparison.Ordinal) == true) connected.TrySetResult();
            if (line.Data is null) connected.TrySetException(new InvalidOperationException(string.Join('\n', said)));
        };
        process.BeginErrorReadLine();
        process.BeginOutputReadLine();
        await connected.Task.WaitAsync(TimeSpan.FromMinutes(2), ct);
    }

    /// <summary>kill -9.</summary>
    public async Task KillAsync()
    {
        if (process is null) return;
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync(CancellationToken.None);
        process.Dispose();
        process = null;
    }

    public async ValueTask DisposeAsync()
    {
        await KillAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }
}
