using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using WearWatch.Servers.Tests.Servers;
using WearWatch.Storage;
using WearWatch.Worker.Jobs;
using WearWatch.Worker.Tests;
using A = WearWatch.Worker.Tests.A;

namespace WearWatch.Servers.Tests;

/// <summary>Screens of one process change when another process has news.</summary>
public sealed class NewsFromOthersTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_reading_taken_by_one_process_is_news_in_another()
    {
        await using var plant = await TestPlant.OpenAsync();
        var chain = await plant.AddChainAsync();
        var (heard, listener) = await ListenAsync(plant.Beside());
        await plant.Desk.TakeReadingAsync(A.Reading(), Ct);
        await UntilAsync(() => heard.Contains(chain));
        await listener.StopAsync(Ct);
    }

    [Fact]
    public async Task What_was_told_while_the_connection_was_broken_is_made_up_for()
    {
        await using var plant = await TestPlant.OpenAsync();
        var chain = await plant.AddChainAsync();
        var (heard, listener) = await ListenAsync(plant.Beside());
        var server = (await TestContext.Current.GetFixture<PostgresServer>())!;
        await server.BreakConnectionsAsync(plant.Database);
        // The clock of the plant stands still, and with it the pause before it listens again.
        await UntilAsync(() =>
            plant.Log.Lines.Any(line => line.Text.Contains("No news from other processes", StringComparison.Ordinal)));
        Npgsql.NpgsqlConnection.ClearAllPools();
        heard.Clear();
        await plant.Desk.TakeReadingAsync(A.Reading(), Ct);
        Assert.Empty(heard);
        await UntilAsync(() =>
        {
            plant.Clock.Advance(TimeSpan.FromSeconds(1));
            return heard.Contains(chain);
        });
        await listener.StopAsync(Ct);
    }

    [Fact]
    public async Task A_transaction_that_is_given_up_is_no_news()
    {
        await using var plant = await TestPlant.OpenAsync();
        var (first, second) = (await plant.AddChainAsync("C1"), await plant.AddChainAsync("C2"));
        var (heard, listener) = await ListenAsync(plant.Beside());
        await using (var db = plant.Db())
        {
            await using var transaction = await db.Database.BeginTransactionAsync(Ct);
            db.Readings.Add(new Storage.Rows.ReadingRow { ChainId = first, Key = "given up", Pitches = 40, LengthMm = 1020 });
            await db.SaveChangesAsync(Ct);
            await transaction.RollbackAsync(Ct);
        }

        await plant.Desk.TakeReadingAsync(A.Reading("C2"), Ct);
        await UntilAsync(() => heard.Contains(second));
        Assert.DoesNotContain(first, heard);
        await listener.StopAsync(Ct);
    }

    /// <summary>Listens in another process, from the moment on from which it really does.</summary>
    private static async Task<(ConcurrentQueue<int> Heard, NewsFromOthers Listener)> ListenAsync(IHost other)
    {
        var heard = new ConcurrentQueue<int>();
        other.Services.GetRequiredService<PlantNews>().ChainsChanged += ids => ids.ToList().ForEach(heard.Enqueue);
        var listener = other.Services.GetServices<IHostedService>().OfType<NewsFromOthers>().Single();
        await listener.StartAsync(Ct);
        await UntilAsync(() => !heard.IsEmpty); // at the beginning every chain counts as changed
        heard.Clear();
        return (heard, listener);
    }

    private static async Task UntilAsync(Func<bool> isSo)
    {
        var since = System.Diagnostics.Stopwatch.StartNew();
        while (!isSo())
        {
            Assert.True(since.Elapsed < Patience, "It did not happen.");
            await Task.Delay(50, Ct);
        }
    }
}
