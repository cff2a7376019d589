using Microsoft.EntityFrameworkCore;
using WearWatch.Servers.Tests.Servers;
using WearWatch.Signals;
using WearWatch.Storage.Rows;

namespace WearWatch.Servers.Tests;

/// <summary>Foreign topics and an edge node at a real mosquitto, with a worker that is killed and comes back.</summary>
[Collection(nameof(OneAtATime))]
public sealed class ForeignSignalTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_foreign_counter_arrives_once_each_though_the_worker_is_killed_and_a_new_mapping_needs_no_restart()
    {
        await using var broker = new Mosquitto();
        await broker.StartAsync(Ct);
        await using var worker = Worker(broker);
        await worker.RegisterAsync(["C0", "C1"], Ct);
        await MapAsync(worker, Hours("press", "site/{line}/{machine}/hours"));
        await worker.StartAsync(Ct);

        const int messages = 1_500;
        var publisher = new StubbornPublisher(broker.Port);
        await publisher.PublishAsync(Counters("site/A/C0/hours", 0, messages / 3), Ct);
        await worker.KillAsync();
        await publisher.PublishAsync(Counters("site/A/C0/hours", messages / 3, messages / 3), Ct);
        await worker.StartAsync(Ct);
        await publisher.PublishAsync(Counters("site/A/C0/hours", 2 * messages / 3, messages / 3), Ct);
        await EventuallyAsync(async () => await CountAsync(worker, "C0") == messages);

        await MapAsync(worker, Hours("kiln", "kiln/{machine}"));
        await EventuallyAsync(async () =>
        {
            await publisher.PublishAsync(Counters("kiln/C1", 0, 10), Ct);
            return await CountAsync(worker, "C1") == 10;
        });
        await MapAsync(worker, Hours("kiln", "kiln/{machine}", version: 2, isActive: false));
        await Task.Delay(TimeSpan.FromSeconds(3), Ct);
        await publisher.PublishAsync(Counters("kiln/C1", 10, 10), Ct);
        await publisher.PublishAsync(Counters("site/A/C0/hours", messages, 1), Ct);
        await EventuallyAsync(async () => await CountAsync(worker, "C0") == messages + 1);
        Assert.Equal(10, await CountAsync(worker, "C1"));
        await using var db = worker.Db();
        // Under load what is switched off may come once more before its topic is left: it is kept aside, not lost, and not taken.
        Assert.DoesNotContain(await db.SetAside.ToListAsync(Ct), row => row.Topic != "kiln/C1");
    }

    [Fact]
    public async Task An_edge_node_that_dies_is_shown_dead_and_births_that_are_lost_are_asked_for()
    {
        await using var broker = new Mosquitto();
        await broker.StartAsync(Ct);
        await using var worker = Worker(broker, ("Mqtt:SparkplugHostId", "wearwatch"));
        await worker.RegisterAsync(["N1"], Ct);
        await MapAsync(worker, new SignalMappingRow
        {
            Name = "nodes",
            Version = 1,
            Source = SignalSource.SparkplugMetric,
            Topic = "Mill/{node}",
            ValuePath = "Drive/Hours",
            Chain = "{node}",
            SavedBy = "Ada",
        });
        await worker.StartAsync(Ct);
        await using var node = new EdgeNode(broker.Port);
        await node.ConnectAsync(Ct);
        await EventuallyAsync(() => Task.FromResult(node.HostIsOnline == true));
        await node.BirthAsync(Ct);
        node.Hours = 100.5;
        await node.DataAsync(Ct);
        await EventuallyAsync(async () => await LastHoursAsync(worker) is 100.5);

        node.Die();
        await EventuallyAsync(async () => await IsOnlineAsync(worker) == false);

        // It comes back, but its birth is lost: what it says by aliases says nothing until it is asked.
        await node.ConnectAsync(Ct);
        node.Hours = 101;
        await node.DataAsync(Ct);
        await EventuallyAsync(async () => await LastHoursAsync(worker) is 101);
        Assert.Equal(1, node.Asked);
        Assert.True(await IsOnlineAsync(worker));

        await worker.KillAsync();
        await EventuallyAsync(() => Task.FromResult(node.HostIsOnline == false));
        node.Hours = 102;
        await node.DataAsync(Ct); // with quality of service 0 it does not wait for the worker
        await worker.StartAsync(Ct);
        await EventuallyAsync(() => Task.FromResult(node.HostIsOnline == true));
        node.Hours = 103;
        await node.DataAsync(Ct);
        await EventuallyAsync(async () => node.Asked == 2 && await LastHoursAsync(worker) is 103);
        await using var db = worker.Db();
        var told = await db.Telemetry.Select(t => t.Value).ToListAsync(Ct);
        Assert.Equal([100, 100.5, 101, 103], told.Distinct().Order());
    }

    [Fact]
    public async Task What_a_person_listens_to_is_heard_for_a_while_and_nothing_of_it_is_taken_in()
    {
        await using var broker = new Mosquitto();
        await broker.StartAsync(Ct);
        await using var worker = Worker(broker);
        await worker.RegisterAsync([], Ct);
        await worker.StartAsync(Ct);
        await new StubbornPublisher(broker.Port).PublishAsync([("site/unheard", "0")], Ct);
        var publisher = new StubbornPublisher(broker.Port);
        await using var db = worker.Db();
        var listening = new ListeningRow { Filter = "site/+", Until = TimeProvider.System.GetUtcNow().AddMinutes(1), By = "Ada" };
        db.Listenings.Add(listening);
        await db.SaveChangesAsync(Ct);
        await EventuallyAsync(async () =>
        {
            await publisher.PublishAsync([("site/press", "1"), ("other", "2")], Ct);
            return await db.HeardMessages.AnyAsync(Ct);
        });
        Assert.Equal(["site/press"], await db.HeardMessages.Select(h => h.Topic).Distinct().ToListAsync(Ct));
        db.Listenings.Remove(listening);
        await db.SaveChangesAsync(Ct);
        await Task.Delay(TimeSpan.FromSeconds(3), Ct);
        await publisher.PublishAsync([("site/late", "3")], Ct);
        await Task.Delay(TimeSpan.FromSeconds(2), Ct);
        Assert.False(await db.HeardMessages.AnyAsync(h => h.Topic == "site/late", Ct));
        Assert.Empty(await db.SetAside.ToListAsync(Ct));
    }

    private static WorkerProcess Worker(Mosquitto broker, params (string Key, string Value)[] more) =>
        new(null, [("Mqtt:Server", "127.0.0.1"), ("Mqtt:Port", $"{broker.Port}"), .. more]);

    private static SignalMappingRow Hours(string name, string topic, int version = 1, bool isActive = true) => new()
    {
        Name = name,
        Version = version,
        Topic = topic,
        ValuePath = "$.run.h",
        TimeForm = TimeNotation.UnixMilliseconds,
        TimePath = "$.t",
        Chain = "{machine}",
        IsActive = isActive,
        SavedBy = "Ada",
    };

    private static IEnumerable<(string Topic, string Payload)> Counters(string topic, int from, int count)
    {
        var start = TimeProvider.System.GetUtcNow().AddHours(-1).ToUnixTimeMilliseconds() / 3_600_000 * 3_600_000;
        return Enumerable.Range(from, count).Select(i =>
            (topic, FormattableString.Invariant($$"""{"run":{"h":{{1000 + i / 1000.0}}},"t":{{start + i * 100}}}""")));
    }

    private static async Task MapAsync(WorkerProcess worker, SignalMappingRow row)
    {
        await using var db = worker.Db();
        db.SignalMappings.Add(row);
        await db.SaveChangesAsync(Ct);
    }

    private static async Task<int> CountAsync(WorkerProcess worker, string chain)
    {
        await using var db = worker.Db();
        return await db.Telemetry.CountAsync(t => db.Chains.Any(c => c.Id == t.ChainId && c.Name == chain), Ct);
    }

    private static async Task<double?> LastHoursAsync(WorkerProcess worker)
    {
        await using var db = worker.Db();
        return await db.Telemetry.OrderByDescending(t => t.Id).Select(t => (double?)t.Value).FirstOrDefaultAsync(Ct);
    }

    private static async Task<bool?> IsOnlineAsync(WorkerProcess worker)
    {
        await using var db = worker.Db();
        return await db.SparkplugNodes.Select(n => (bool?)n.IsOnline).SingleOrDefaultAsync(Ct);
    }

    private static async Task EventuallyAsync(Func<Task<bool>> holds)
    {
        for (var i = 0; i < 300 && !await holds(); i++) await Task.Delay(100, Ct);
        Assert.True(await holds());
    }
}
