using Microsoft.EntityFrameworkCore;
using WearWatch.Servers.Tests.Servers;

namespace WearWatch.Servers.Tests;

[Collection(nameof(OneAtATime))]
public sealed class IntakeTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_is_published_while_the_worker_is_away_waits_at_the_broker()
    {
        await using var broker = new Mosquitto();
        await broker.StartAsync(Ct);
        await using var worker = new WorkerProcess(null, ("Mqtt:Server", "127.0.0.1"), ("Mqtt:Port", $"{broker.Port}"));
        await worker.RegisterAsync(["C0"], Ct);
        await worker.StartAsync(Ct);
        await worker.KillAsync();

        const int messages = 3_000; // more than a broker keeps by default
        await new StubbornPublisher(broker.Port).PublishAsync(SentMessages.Temperatures(0, messages, 1, Start), Ct);
        await using var db = worker.Db();
        Assert.Equal(0, await db.Telemetry.CountAsync(Ct));
        await worker.StartAsync(Ct);
        await StoredAsync(worker, messages);
    }

    [Fact]
    public async Task Two_workers_of_one_name_share_the_messages()
    {
        await using var broker = new Mosquitto();
        await broker.StartAsync(Ct);
        await using var first = Worker("one");
        await using var second = Worker("two");
        foreach (var worker in new[] { first, second })
        {
            await worker.RegisterAsync(["C0", "C1"], Ct);
            await worker.StartAsync(Ct);
        }

        const int messages = 2_000;
        await new StubbornPublisher(broker.Port).PublishAsync(SentMessages.Temperatures(0, messages, 2, Start), Ct);
        var (one, two) = (0, 0);
        for (var i = 0; one + two < messages && i < 600; i++)
        {
            await Task.Delay(100, Ct);
            (one, two) = (await CountAsync(first), await CountAsync(second));
        }

        Assert.Equal(messages, one + two); // each has a database of its own here, so the sum shows that no message went to both
        Assert.True(one > 0 && two > 0, $"{one} and {two}");

        WorkerProcess Worker(string name) => new(null,
            ("Mqtt:Server", "127.0.0.1"), ("Mqtt:Port", $"{broker.Port}"), ("Mqtt:ClientId", name), ("Mqtt:SharedBy", "workers"));
    }

    private static DateTimeOffset Start => TimeProvider.System.GetUtcNow().AddHours(-1);

    private static async Task<int> CountAsync(WorkerProcess worker)
    {
        await using var db = worker.Db();
        return await db.Telemetry.CountAsync(Ct);
    }

    private static async Task StoredAsync(WorkerProcess worker, int messages)
    {
        for (var i = 0; await CountAsync(worker) < messages && i < 600; i++) await Task.Delay(100, Ct);
        Assert.Equal(messages, await CountAsync(worker));
    }
}
