using System.Globalization;
using Microsoft.EntityFrameworkCore;
using WearWatch.Servers.Tests.Servers;
using WearWatch.Storage;
using WearWatch.Storage.Series;

namespace WearWatch.Servers.Tests;

/// <summary>
/// Every server is killed three times and the worker five times while points arrive: each is stored exactly once, and sent on.
/// </summary>
/// <remarks>20,000 points in every run; 200,000 in the long form, for <c>tests/run --long</c>.</remarks>
public sealed class ChaosTests
{
    /// <summary>A broker that saves each change takes some hundred messages a second, so each has many points in it.</summary>
    private const int Messages = 1_000;

    private const int Chains = 20;

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(20_000, false)]
    [InlineData(20_000, true)]
    [InlineData(200_000, false, Explicit = true)]
    [InlineData(200_000, true, Explicit = true)]
    public async Task Every_acknowledged_point_is_stored_exactly_once_whatever_is_killed(int points, bool onPostgres)
    {
        await using var broker = new Mosquitto(savesEachChange: true);
        await using var influx = new InfluxServer();
        await using var postgres = onPostgres ? PostgresServer.OnDisk() : null;
        if (postgres is not null) await postgres.InitializeAsync();
        await influx.StartAsync(Ct);
        await broker.StartAsync(Ct);
        await using var worker = new WorkerProcess(
            postgres is null ? null : await postgres.NewDatabaseAsync(),
            ("Mqtt:Server", "127.0.0.1"), ("Mqtt:Port", $"{broker.Port}"), ("Mqtt:MostUnacknowledged", "20"),
            ("Influx:Url", $"{influx.Url}"));
        await worker.RegisterAsync(Enumerable.Range(0, Chains).Select(i => $"C{i}"), Ct);
        await worker.StartAsync(Ct);

        List<(Func<Task> Kill, Func<Task> Start)> disasters = [
            .. Enumerable.Repeat<(Func<Task>, Func<Task>)>((() => worker.KillAsync(), () => worker.StartAsync(Ct)), 5),
            .. Enumerable.Repeat<(Func<Task>, Func<Task>)>((() => broker.KillAsync(Ct), () => broker.StartAsync(Ct)), 3),
            .. Enumerable.Repeat<(Func<Task>, Func<Task>)>((() => influx.KillAsync(Ct), () => influx.StartAsync(Ct)), 3),
            .. postgres is null
                ? []
                : Enumerable.Repeat<(Func<Task>, Func<Task>)>((() => postgres.KillAsync(Ct), () => postgres.StartAsync(Ct)), 3),
        ];
        new Random(8).Shuffle(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(disasters));
        await PublishAsync(broker.Port, points, disasters);

        await using (var db = worker.Db())
        {
            await SettleAsync(db, points);
            await CheckAsync(db, points);
            await UntilAsync(async () => await db.Telemetry.CountAsync(t => t.AwaitsForwarding, Ct) == 0);
            Assert.Empty(await db.Parked.ToListAsync(Ct));
        }

        using var reader = new SeriesReader(influx.Address());
        Assert.Equal(points, (await reader.QueryAsync("SELECT count(value) FROM temperature", null, Ct)).Single().Number(0, 1));
    }

    /// <summary>
    /// Publishes all points. They come in as many stretches as there are disasters, and each disaster happens in the middle of
    /// one.
    /// </summary>
    private static async Task PublishAsync(int port, int points, List<(Func<Task> Kill, Func<Task> Start)> disasters)
    {
        var messages = MessagesOf(points).ToList();
        var over = 0;
        // The next stretch waits until the disaster of this one is over, or a fast sender would be done before anything happens.
        var publisher = new StubbornPublisher(port, inFlight: 10,
            pace: sent => UntilAsync(() => Task.FromResult(sent * disasters.Count < messages.Count * (over + 1))));
        var publishing = publisher.PublishAsync(messages, Ct);
        while (over < disasters.Count)
        {
            await UntilAsync(() => Task.FromResult(publishing.IsFaulted
                || publisher.Acknowledged * disasters.Count * 2 >= messages.Count * (2 * over + 1)));
            await disasters[over].Kill();
            await disasters[over].Start();
            over++;
        }

        await publishing;
        Assert.Equal(messages.Count, publisher.Acknowledged);
    }

    /// <summary>Waits until all is stored, or nothing more comes.</summary>
    private static async Task SettleAsync(WearDb db, int points)
    {
        var (before, still) = (-1, 0);
        while (before < points && still < 300)
        {
            var now = await db.Telemetry.CountAsync(Ct);
            (before, still) = (now, now == before ? still + 1 : 0);
            await Task.Delay(100, Ct);
        }
    }

    private static IEnumerable<(string Topic, string Payload)> MessagesOf(int points) => SentMessages
        .Temperatures(0, points, Chains, TimeProvider.System.GetUtcNow().AddHours(-1))
        .GroupBy(m => m.Topic)
        .SelectMany(chain =>
            chain.Chunk(points / Messages).Select(some => (chain.Key, $"[{string.Join(',', some.Select(m => m.Payload))}]")));

    private static async Task CheckAsync(WearDb db, int points)
    {
        var stored = await db.Telemetry.AsNoTracking().Select(t => new { t.MessageId, t.Value }).ToListAsync(Ct);
        Assert.Equal(points, stored.Count);
        var numbers = stored.ToDictionary(s => int.Parse(s.MessageId[1..], CultureInfo.InvariantCulture), s => s.Value);
        Assert.Equal(Enumerable.Range(0, points), numbers.Keys.Order());
        // decimals of a figure with one digit after the point
        Assert.All(numbers, s => Assert.Equal(SentMessages.ValueOf(s.Key), s.Value, 9));
        // The sums of the hours are made in the same transactions: they count each point once as well.
        Assert.Equal(points, await db.TelemetryHours.SumAsync(h => h.Count, Ct));
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
