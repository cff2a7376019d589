using Microsoft.EntityFrameworkCore;
using WearWatch.Servers.Tests.Servers;

namespace WearWatch.Servers.Tests;

/// <summary>
/// Broker and worker are killed again and again while messages arrive: each acknowledged message is stored exactly once.
/// </summary>
/// <remarks>
/// One point in a message. <see cref="ChaosTests"/> sends many in one, since a broker that saves each change takes some hundred
/// messages a second.
/// </remarks>
[Collection(nameof(OneAtATime))]
public sealed class CrashTests
{
    private const int Messages = 4_000;
    private const int Chains = 20;

    /// <summary>Five of the worker and three of the broker, spread over the messages.</summary>
    private const int Kills = 8;

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(8);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_acknowledged_message_is_stored_exactly_once_though_broker_and_worker_are_killed()
    {
        await using var broker = new Mosquitto(savesEachChange: true);
        await broker.StartAsync(Ct);
        await using var worker = new WorkerProcess(null, ("Mqtt:Server", "127.0.0.1"), ("Mqtt:Port", $"{broker.Port}"));
        await worker.RegisterAsync(Enumerable.Range(0, Chains).Select(i => $"C{i}"), Ct);
        await worker.StartAsync(Ct);

        // The next stretch waits until the kill of this one is over, or a fast sender would be done before anything happens.
        var over = 0;
        var publisher = new StubbornPublisher(
            broker.Port, pace: sent => UntilAsync(() => Task.FromResult(sent * Kills < Messages * (over + 1))));
        var start = TimeProvider.System.GetUtcNow().AddHours(-1);
        var publishing = publisher.PublishAsync(SentMessages.Temperatures(0, Messages, Chains, start), Ct);
        for (; over < Kills; over++)
        {
            await UntilAsync(() =>
                Task.FromResult(publishing.IsCompleted || publisher.Acknowledged * Kills * 2 >= Messages * (2 * over + 1)));
            Assert.False(publishing.IsCompleted, publishing.Exception?.Message ?? "All was sent before the kills were over.");
            if (over % 3 == 1)
            {
                await broker.KillAsync(Ct);
                await broker.StartAsync(Ct);
            }
            else
            {
                await worker.KillAsync();
                await worker.StartAsync(Ct);
            }
        }

        await publishing;
        Assert.Equal(Messages, publisher.Acknowledged);
        await using var db = worker.Db();
        await UntilAsync(async () => await db.Telemetry.CountAsync(Ct) >= Messages);

        var stored = await db.Telemetry.Select(t => new { t.MessageId, t.Value }).ToListAsync(Ct);
        Assert.Equal(Enumerable.Range(0, Messages).Select(i => $"t{i}").ToHashSet(), stored.Select(s => s.MessageId).ToHashSet());
        Assert.Equal(Messages, stored.Count);
        Assert.All(stored, s => Assert.Equal(
            SentMessages.ValueOf(int.Parse(s.MessageId[1..], System.Globalization.CultureInfo.InvariantCulture)), s.Value, 9));
        // The sums of the hours are made in the same transactions: they count each message once as well.
        Assert.Equal(Messages, await db.TelemetryHours.SumAsync(h => h.Count, Ct));
        Assert.Empty(await db.SetAside.ToListAsync(Ct));
    }

    private static async Task UntilAsync(Func<Task<bool>> holds)
    {
        var began = TimeProvider.System.GetTimestamp();
        while (!await holds())
        {
            if (TimeProvider.System.GetElapsedTime(began) > Patience)
                throw new TimeoutException("It did not come to that in time.");
            await Task.Delay(50, Ct);
        }
    }
}
