using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Engines;

namespace WearWatch.Worker.Tests;

/// <summary>A worker process that is killed with no chance to tidy up loses nothing that it had acknowledged.</summary>
public sealed class KillTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wear-kill");

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task A_killed_import_has_whole_chunks_and_the_same_file_once_more_completes_it()
    {
        const int rows = 16_000;
        await File.WriteAllTextAsync(
            At("chains.csv"), "chain,pitch_mm\n" + string.Concat(Enumerable.Range(0, 100).Select(i => $"C{i},25.4\n")), Ct);
        await File.WriteAllLinesAsync(At("readings.csv"), [A.ReadingsHeader,
            .. Enumerable.Range(0, rows).Select(i => A.Row($"C{i % 100}", 100 * (i / 100), 0.0005 * (i / 100)))], Ct);

        using (var worker = Start("import", folder.FullName, "--data", At("data")))
        {
            while (!worker.HasExited && await ReadingsAsync() < 4_000) await Task.Delay(20, Ct);
            worker.Kill(entireProcessTree: true);
            await worker.WaitForExitAsync(Ct);
        }

        var after = await ReadingsAsync();
        // Of each of the 100 chains three rows are held until the file is through.
        Assert.True(after is >= 4_000 and <= rows && ((after + 300) % 4_000 == 0 || after == rows), $"{after} readings");
        using var again = Start("import", At("readings.csv"), "--data", At("data"));
        var output = await again.StandardOutput.ReadToEndAsync(Ct);
        await again.WaitForExitAsync(Ct);
        Assert.Contains($"readings.csv: {rows - after} new, {after} already known, 0 waiting for a person, 0 refused", output,
            StringComparison.Ordinal);
        Assert.Equal(rows, await ReadingsAsync());
    }

    [Fact]
    public async Task A_killed_worker_keeps_every_reading_whose_file_it_had_put_away()
    {
        Directory.CreateDirectory(At("data", "inbox"));
        using var worker = Start("serve", "--data", At("data"));
        await DropAsync("chains.csv", "chain,pitch_mm\nC1,25.4\n");
        for (var i = 1; Done() < 8 && !worker.HasExited; i++)
        {
            await DropAsync($"reading-{i:0000}.csv", $"{A.ReadingsHeader}\n{A.Row(counterH: i)}\n");
            await Task.Delay(40, Ct);
        }

        worker.Kill(entireProcessTree: true);
        await worker.WaitForExitAsync(Ct);
        var putAway = Done();
        Assert.True(putAway >= 8, await worker.StandardError.ReadToEndAsync(Ct));
        Assert.InRange(await ReadingsAsync(), putAway - 1, int.MaxValue); // one of the files is the register
        await using var db = Open();
        Assert.Equal("ok", await CheckAsync(db));
    }

    private int Done() =>
        Directory.Exists(At("data", "inbox", "done")) ? Directory.GetFiles(At("data", "inbox", "done"), "*.csv").Length : 0;

    /// <summary>Drops a file as a careful sender does: written under another name, then renamed.</summary>
    private async Task DropAsync(string name, string text)
    {
        var path = At("data", "inbox", name);
        await File.WriteAllTextAsync(path + ".part", text, Ct);
        File.Move(path + ".part", path);
    }

    private async Task<int> ReadingsAsync()
    {
        if (!File.Exists(Path.Combine(At("data"), "wearwatch.db"))) return 0;
        await using var db = Open();
        try
        {
            return await db.Readings.CountAsync(Ct);
        }
        catch (Microsoft.Data.Sqlite.SqliteException)
        {
            return 0; // the tables are not made yet
        }
    }

    private WearDb Open() => WearStore.InSqlite(Path.Combine(At("data"), "wearwatch.db")).CreateDbContext();

    private static async Task<string> CheckAsync(WearDb db) =>
        await db.Database.SqlQueryRaw<string>("SELECT integrity_check AS Value FROM pragma_integrity_check").FirstAsync(Ct);

    private string At(params string[] path) => Path.Combine([folder.FullName, .. path]);

    private static Process Start(params string[] words)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "WearWatch.Worker.dll"));
        foreach (var word in words) start.ArgumentList.Add(word);
        start.Environment["WearWatch__InboxEvery"] = "00:00:00.1";
        return Process.Start(start)!;
    }
}
