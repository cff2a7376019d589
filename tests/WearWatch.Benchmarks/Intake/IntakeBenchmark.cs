using System.Diagnostics;
using System.Globalization;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using MQTTnet;
using MQTTnet.Formatter;
using MQTTnet.Protocol;
using MQTTnet.Server;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;
using WearWatch.Worker;
using WearWatch.Worker.Mqtt;

namespace WearWatch.Benchmarks.Intake;

/// <summary>
/// How fast telemetry is taken in, against what the MQTT library alone receives from the same broker in the same run.
/// </summary>
/// <remarks>
/// One sender publishes, 100 messages in flight, and it is timed until the last of them is there. The library alone acknowledges
/// and counts; the intake reads, stores, sums up, commits to disk and then acknowledges. Broker and sender are the same, in this
/// process. Round 0 does not count: the runtime still compiles both while they run, and a worker runs for months.
/// </remarks>
internal static class IntakeBenchmark
{
    public const double Wanted = 0.7;

    private const int Messages = 20_000;
    private const int WarmUp = 2_000;
    private const int Chains = 40;
    private const int Rounds = 5;

    public static async Task<bool> RunAsync(TextWriter output)
    {
        var port = FreePort();
        using var broker = new MqttServerFactory()
            .CreateMqttServer(new MqttServerOptionsBuilder().WithDefaultEndpoint().WithDefaultEndpointPort(port)
            .WithPersistentSessions().WithMaxPendingMessagesPerClient(2 * Messages).Build());
        await broker.StartAsync();
        var ratios = new List<double>();
        for (var round = 0; round <= Rounds; round++)
        {
            var library = Messages / (await LibraryAsync(port, round)).TotalSeconds;
            await ForgetAsync(broker);
            var intake = Messages / (await IntakeAsync(port, round)).TotalSeconds;
            await ForgetAsync(broker);
            if (round > 0) ratios.Add(intake / library);
            await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture,
                $"intake, round {round}: {intake:#,0} messages/s stored, {library:#,0} received by the library alone, ratio "
                + $"{intake / library:0.00}"));
        }

        var median = ratios.Order().ElementAt(Rounds / 2);
        await output.WriteLineAsync(
            string.Create(CultureInfo.InvariantCulture, $"intake: median ratio {median:0.00}, wanted {Wanted:0.0}"));
        await broker.StopAsync();
        return median >= Wanted;
    }

    /// <summary>
    /// Ends the sessions at the broker, which else keeps the messages of one half for the receiver of the other.
    /// </summary>
    private static async Task ForgetAsync(MqttServer broker)
    {
        foreach (var session in await broker.GetSessionsAsync()) await session.DeleteAsync();
    }

    private static async Task<TimeSpan> LibraryAsync(int port, int round)
    {
        using var client = new MqttClientFactory().CreateMqttClient();
        var received = 0;
        client.ApplicationMessageReceivedAsync += _ =>
        {
            Interlocked.Increment(ref received);
            return Task.CompletedTask;
        };
        await client.ConnectAsync(Options(port, $"library-{round}"));
        await client.SubscribeAsync("wearwatch/v1/plant/+/+", MqttQualityOfServiceLevel.AtLeastOnce);
        var elapsed = await TimedAsync(port, $"l{round}-", () => Task.FromResult(Volatile.Read(ref received)));
        await client.DisconnectAsync(new MqttClientDisconnectOptions { SessionExpiryInterval = 0 });
        return elapsed;
    }

    private static async Task<TimeSpan> IntakeAsync(int port, int round)
    {
        var folder = Directory.CreateTempSubdirectory("wear-intake").FullName;
        using var host = Worker(folder, port);
        var store = host.Services.GetRequiredService<WearStore>();
        await store.PrepareAsync();
        await using (var db = store.CreateDbContext())
        {
            db.Chains.AddRange(Enumerable.Range(0, Chains).Select(i => new ChainRow { Name = $"C{i}", PitchMm = 25.4 }));
            await db.SaveChangesAsync();
        }

        await host.StartAsync();
        while (!host.Services.GetRequiredService<BrokerLink>().IsConnected) await Task.Delay(20);
        var elapsed = await TimedAsync(port, $"w{round}-", async () =>
        {
            await using var db = store.CreateDbContext();
            return await db.Telemetry.CountAsync();
        });
        await host.StopAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
        return elapsed;
    }

    /// <summary>
    /// The time from the first publication until the last message is where it is to go, after some messages to warm up.
    /// </summary>
    private static async Task<TimeSpan> TimedAsync(int port, string prefix, Func<Task<int>> arrived)
    {
        await PublishAsync(port, prefix + "warm", WarmUp);
        while (await arrived() < WarmUp) await Task.Delay(20);
        var watch = Stopwatch.StartNew();
        await PublishAsync(port, prefix, Messages);
        while (await arrived() < WarmUp + Messages) await Task.Delay(30);
        return watch.Elapsed;
    }

    private static IHost Worker(string folder, int port)
    {
        var builder = Host.CreateEmptyApplicationBuilder(null);
        builder.Configuration.AddInMemoryCollection(new Dictionary<string, string?>
        {
            ["WearWatch:DataFolder"] = folder,
            ["WearWatch:Worker"] = "true",
            ["WearWatch:Mqtt:Server"] = "127.0.0.1",
            ["WearWatch:Mqtt:Port"] = port.ToString(CultureInfo.InvariantCulture),
        });
        builder.Services.AddWearWatch(builder.Configuration);
        return builder.Build();
    }

    private static async Task PublishAsync(int port, string prefix, int count)
    {
        using var sender = new MqttClientFactory().CreateMqttClient();
        await sender.ConnectAsync(Options(port, "sender"));
        var now = TimeProvider.System.GetUtcNow().UtcDateTime.AddHours(-1);
        foreach (var some in Enumerable.Range(0, count).Chunk(100))
            await Task.WhenAll(some.Select(i => sender.PublishAsync(new MqttApplicationMessage
            {
                Topic = $"wearwatch/v1/plant/C{i % Chains}/temperature",
                PayloadSegment = Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture,
                    $"{{\"id\":\"{prefix}{i}\","
                    + $"\"at\":\"{now.AddMilliseconds(i):yyyy-MM-dd'T'HH:mm:ss.fff'Z'}\","
                    + $"\"temperature_c\":{i % 100 / 2.0:0.0}}}")),
                QualityOfServiceLevel = MqttQualityOfServiceLevel.AtLeastOnce,
            })));
        await sender.DisconnectAsync();
    }

    private static MqttClientOptions Options(int port, string clientId) =>
        new MqttClientOptionsBuilder().WithTcpServer("127.0.0.1", port)
        .WithProtocolVersion(MqttProtocolVersion.V500).WithClientId(clientId).WithCleanStart(false)
        .WithSessionExpiryInterval(86_400).WithReceiveMaximum(1000).Build();

    private static int FreePort()
    {
        using var listener = new System.Net.Sockets.TcpListener(System.Net.IPAddress.Loopback, 0);
        listener.Start();
        return ((System.Net.IPEndPoint)listener.LocalEndpoint).Port;
    }
}
