using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Webhooks;

/// <summary>A worker process that is killed again and again loses no event; the receiver has each once by its id.</summary>
public sealed class WebhookKillTests : IDisposable
{
    private const int Notices = 60;
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wear-hooks");

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task Each_event_arrives_though_the_worker_is_killed_while_it_sends_and_the_receiver_fails_between()
    {
        await using var receiver = new WebhookReceiver();
        receiver.Answer = (n, _) => n % 7 == 3 ? 503 : 204;
        receiver.Start();
        await FillAsync(receiver.Url);
        for (var kill = 1; kill <= 3; kill++)
        {
            using var worker = Start();
            var before = receiver.All.Count;
            while (!worker.HasExited && receiver.All.Count < before + 4) await Task.Delay(20, Ct);
            worker.Kill(entireProcessTree: true);
            await worker.WaitForExitAsync(Ct);
            await LetGoAsync();
        }

        using var last = Start();
        for (var wait = 0; wait < 1200 && Ids(receiver).Count < Notices; wait++)
        {
            await Task.Delay(100, Ct);
            if (wait % 20 == 0) await LetGoAsync();
        }

        last.Kill(entireProcessTree: true);
        await last.WaitForExitAsync(Ct);
        Assert.True(Ids(receiver).Count > 0, await last.StandardError.ReadToEndAsync(Ct));
        Assert.Equal(Notices, Ids(receiver).Count);
        // What came for the first time came in the order in which it was written.
        await using var db = Open();
        Assert.Equal(await db.WebhookDeliveries.OrderBy(d => d.Id).Select(d => d.EventId).ToListAsync(Ct), Ids(receiver));
    }

    private static List<string> Ids(WebhookReceiver receiver) => [.. receiver.Taken.Select(t => t.Id).Distinct()];

    /// <summary>Ends pauses and what the killed held, for which a plant would wait a minute.</summary>
    private async Task LetGoAsync()
    {
        await using var db = Open();
        await db.WebhookAddresses.ExecuteUpdateAsync(a => a.SetProperty(x => x.NextTryAt, TestPlant.Start), Ct);
    }

    private async Task FillAsync(string url)
    {
        await using var db = Open();
        await WearStore.InSqlite(Path).PrepareAsync(Ct);
        db.Chains.AddRange(Enumerable.Range(0, Notices).Select(i => new ChainRow { Name = $"C{i:00}", PitchMm = 25.4 }));
        db.WebhookMarks.Add(new WebhookMarkRow());
        db.WebhookAddresses.Add(new WebhookAddressRow
        {
            Name = "orders",
            Url = url,
            Kinds = [WebhookEventKind.NoticeRaised],
            Secret = WearWatch.Plant.Webhooks.WebhookSecret.Make(),
            AddedBy = "Ada",
        });
        await db.SaveChangesAsync(Ct);
        db.Notices.AddRange((await db.Chains.OrderBy(c => c.Id).ToListAsync(Ct)).Select(c => new NoticeRow
        {
            ChainId = c.Id,
            Kind = NoticeKind.LimitNear,
            Why = $"it wears",
            WhatToDo = $"look",
            RaisedAt = TestPlant.Start,
        }));
        await db.SaveChangesAsync(Ct);
    }

    private string Path => System.IO.Path.Combine(folder.FullName, "data", "wearwatch.db");

    private WearDb Open()
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(Path)!);
        return WearStore.InSqlite(Path).CreateDbContext();
    }

    private Process Start()
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(System.IO.Path.Combine(AppContext.BaseDirectory, "WearWatch.Worker.dll"));
        foreach (var word in new[] { "serve", "--data", System.IO.Path.Combine(folder.FullName, "data") })
            start.ArgumentList.Add(word);
        start.Environment["WearWatch__Webhooks__Loopback"] = "true";
        start.Environment["WearWatch__Webhooks__Every"] = "00:00:00.1";
        return Process.Start(start)!;
    }
}
