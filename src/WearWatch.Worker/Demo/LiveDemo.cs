using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using MQTTnet;
using MQTTnet.Formatter;
using MQTTnet.Protocol;
using WearWatch.Plant.Telemetry;
using WearWatch.SensorSim;
using WearWatch.SensorSim.Live;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Demo;

/// <summary>The machines of the simulated mill, speaking to a broker as real ones do.</summary>
public sealed class LiveDemo(IDbContextFactory<WearDb> database, IOptions<TelemetryOptions> telemetry, TimeProvider clock)
{
    private const int Seed = 7;
    private static readonly TimeSpan Tick = TimeSpan.FromSeconds(1);

    /// <summary>
    /// Publishes some days of the past faster than they passed, then what happens from now on, until it is stopped. What is in
    /// the plant's memory of an earlier run stays: it goes on from there.
    /// </summary>
    /// <param name="broker">Host and port of the broker.</param>
    /// <param name="days">Days of the past.</param>
    /// <param name="speed">How many times as fast as they passed.</param>
    /// <param name="fault">What is wrong.</param>
    /// <param name="faultDays">Since how many days.</param>
    /// <param name="faultyChain">At which chain.</param>
    /// <param name="published">Told how many messages were acknowledged, and up to when.</param>
    /// <param name="ct">Stops it.</param>
    public async Task RunAsync(
        (string Host, int Port) broker, int days, double speed, LiveFault fault, double faultDays, string faultyChain,
        Action<int, DateTimeOffset> published, CancellationToken ct)
    {
        var start = clock.GetUtcNow();
        var mill = new LiveMill(new Mill(start, Seed), telemetry.Value.Plant, Seed);
        await MeasureInAsync(mill, start - TimeSpan.FromDays(days + 1), ct);
        using var client = new MqttClientFactory().CreateMqttClient();
        await client.ConnectAsync(
            new MqttClientOptionsBuilder().WithTcpServer(broker.Host, broker.Port).WithProtocolVersion(MqttProtocolVersion.V500)
            .WithClientId("quillfen-mill").Build(), ct);
        var (at, count, wrongFrom) =
            (await BeginAsync(start - TimeSpan.FromDays(days), ct), 0, start - TimeSpan.FromDays(faultDays));
        while (!ct.IsCancellationRequested)
        {
            var now = clock.GetUtcNow();
            var to = at + speed * Tick < now ? at + speed * Tick : now;
            foreach (var message in mill.Between(at, to, at >= wrongFrom ? fault : LiveFault.None, faultyChain))
            {
                await client.PublishAsync(new MqttApplicationMessage
                {
                    Topic = message.Topic,
                    PayloadSegment = Encoding.UTF8.GetBytes(message.Payload),
                    QualityOfServiceLevel = MqttQualityOfServiceLevel.AtLeastOnce,
                }, ct);
                count++;
            }

            at = to;
            published(count, at);
            await Task.Delay(Tick, clock, ct);
        }
    }

    /// <summary>Where to begin: right after what an earlier run has published.</summary>
    private async Task<DateTimeOffset> BeginAsync(DateTimeOffset wanted, CancellationToken ct)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        return await db.Telemetry.MaxAsync(t => (DateTimeOffset?)t.At, ct) is { } last && last >= wanted
            ? last.AddTicks(1)
            : wanted;
    }

    /// <summary>The mill's fitters measured the sensors in before.</summary>
    private async Task MeasureInAsync(LiveMill mill, DateTimeOffset from, CancellationToken ct)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        foreach (var position in mill.Positions)
        {
            if (await db.Chains.SingleOrDefaultAsync(c => c.Name == position.Chain, ct) is not { } chain) continue;
            if (await db.SensorPairs.AnyAsync(s => s.ChainId == chain.Id, ct)) continue;
            db.SensorPairs.Add(new SensorPairRow
            {
                ChainId = chain.Id,
                From = from,
                DistanceMm = position.DistanceMm,
                DistanceUncertaintyMm = 0.1,
                DriverTeeth = LivePosition.DriverTeeth,
                ToldBy = "demo",
            });
        }

        await db.SaveChangesAsync(ct);
    }
}
