using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Telemetry;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Worker.Forwarding;
using WearWatch.Worker.Mqtt;

namespace WearWatch.Dashboard.Administration.Arrivals;

/// <summary>Asks what arrives from machines, what is late and what was set aside.</summary>
public sealed class ArrivalsQuery(
    IDbContextFactory<WearDb> databases, BrokerLink link, EmbeddedBroker embedded, IOptions<MqttOptions> mqtt,
    IOptions<InfluxOptions> influx, IServiceProvider services,
    TimeProvider clock)
{
    private const int AsideShown = 50;
    private const int PayloadShown = 300;

    /// <summary>So far back it is looked for what a source was used to send.</summary>
    private static readonly TimeSpan Habit = TimeSpan.FromDays(14);

    /// <summary>The view as of now.</summary>
    public async Task<ArrivalsView> AskAsync(PlantTime time, CancellationToken ct)
    {
        var now = clock.GetUtcNow();
        await using var db = await databases.CreateDbContextAsync(ct);
        var waiting = db.SetAside.AsNoTracking().Where(s => s.Settlement == Settlement.Waiting);
        var aside = await waiting.OrderByDescending(s => s.LastAt).Take(AsideShown).ToListAsync(ct);
        var (broker, isWell) = Broker(time);
        return new ArrivalsView(await SourcesAsync(db, now, ct), [.. aside.Select(Row)], await waiting.CountAsync(ct), broker,
            isWell, await SentOnAsync(db, ct))
        {
            Nodes = await db.SparkplugNodes.AsNoTracking().OrderBy(n => n.IsOnline).ThenBy(n => n.Group).ThenBy(n => n.Node)
                .ToListAsync(ct),
        };
    }

    private async Task<SentOnState?> SentOnAsync(WearDb db, CancellationToken ct)
    {
        if (influx.Value.Address is null) return null;
        var last = await db.Parked.AsNoTracking().OrderByDescending(p => p.TelemetryId).Select(p => p.Reason)
            .FirstOrDefaultAsync(ct);
        return new SentOnState(
            await db.Telemetry.CountAsync(t => t.AwaitsForwarding, ct), await db.Parked.CountAsync(ct), last ?? "",
            services.GetService<Forwarder>()?.Trouble);
    }

    private static async Task<IReadOnlyList<SourceLine>> SourcesAsync(WearDb db, DateTimeOffset now, CancellationToken ct)
    {
        var since = now - Habit;
        var hours = await (from hour in db.TelemetryHours.AsNoTracking()
                           where hour.Hour >= since
                           join chain in db.Chains on hour.ChainId equals chain.Id
                           select new { chain.Name, hour.Kind, hour.Hour, hour.Count }).ToListAsync(ct);
        return [.. hours.GroupBy(h => (h.Name, h.Kind))
            .Select(g => new SourceLine(
                g.Key.Name, g.Key.Kind, g.Max(h => h.Hour), g.Where(h => h.Hour > now - TimeSpan.FromDays(1)).Sum(h => h.Count),
                Lateness.Of([.. g.Select(h => h.Hour).Order()], now)))
            .OrderByDescending(s => s.LateBy is not null).ThenBy(s => s.Chain, StringComparer.Ordinal).ThenBy(s => s.Kind)];
    }

    private (Phrase Words, bool IsWell) Broker(PlantTime time)
    {
        if (embedded.Port > 0) return ($"Sensors send to the broker in this program, port {embedded.Port}.", true);
        if (mqtt.Value.Server.Length == 0) return ($"This program takes no telemetry: no broker is set.", false);
        var server = $"{mqtt.Value.Server}:{mqtt.Value.Port}";
        return link.IsConnected ? (Phrase.Of($"Connected to the broker {server} since {time.Moment(link.Since!.Value)}."), true)
            : link.Since is { } lost
                ? (Phrase.Of($"The broker {server} is not reached since {time.Moment(lost)}: {link.Problem}"), false)
            : ($"The broker {server} has not answered yet.", false);
    }

    private static AsideLine Row(SetAsideRow row)
    {
        var text = Encoding.UTF8.GetString(row.Payload);
        return new AsideLine(
            row.Id, row.Topic, text.Length > PayloadShown ? text[..PayloadShown] + "…" : text, row.Reason, row.Times, row.LastAt);
    }
}
