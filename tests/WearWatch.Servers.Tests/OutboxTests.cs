using Microsoft.EntityFrameworkCore;
using WearWatch.Servers.Tests.Servers;
using WearWatch.Signals;
using WearWatch.Storage.Rows;
using WearWatch.Storage.Series;
using WearWatch.Worker.Forwarding;
using WearWatch.Worker.Tests;

namespace WearWatch.Servers.Tests;

/// <summary>Telemetry is sent on to a real InfluxDB 1.6.7.</summary>
[Collection(nameof(OneAtATime))]
public sealed class OutboxTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Rows_wait_until_the_store_has_them_and_are_there_with_their_tags_to_the_tick()
    {
        await using var influx = new InfluxServer();
        await influx.StartAsync(Ct);
        await using var plant = await TestPlant.OpenAsync(("Influx:Url", $"{influx.Url}"));
        var chain = await plant.AddChainAsync("C 1=a", "line=Press");
        await AddAsync(plant, chain, count: 3);
        var outbox = plant.Get<Outbox>();
        Assert.Equal(3, await outbox.LengthAsync(Ct));
        Assert.Equal((new SeriesAnswer.Stored(), 3), await outbox.SendAsync(Ct));
        Assert.Null(await outbox.SendAsync(Ct));
        var series = Assert.Single(await plant.Get<SeriesReader>().QueryAsync(
            "SELECT value FROM temperature WHERE chain = $chain GROUP BY chain, line",
            new Dictionary<string, object> { ["chain"] = "C 1=a" }, Ct));
        Assert.Equal(("C 1=a", "Press"), (series.Tags["chain"], series.Tags["line"]));
        Assert.Equal([20.0, 21, 22], Enumerable.Range(0, 3).Select(i => series.Number(i, 1)!.Value));
        Assert.Equal((TestPlant.Start.AddTicks(1) - DateTimeOffset.UnixEpoch).Ticks, (long)series.Rows[1][0]! / 100);
    }

    [Fact]
    public async Task Rows_that_the_store_refuses_are_parked_with_its_reason_and_the_others_are_stored()
    {
        await using var influx = new InfluxServer();
        await influx.StartAsync(Ct);
        await using var plant = await TestPlant.OpenAsync(("Influx:Url", $"{influx.Url}"));
        // The field has a type already, as if another program had written a text into it: every row of this measurement is
        // refused.
        var text = FormattableString.Invariant(
            $"length value=\"text\" {(TestPlant.Start - DateTimeOffset.UnixEpoch).Ticks * 100}");
        using (var writer = new SeriesWriter(influx.Address())) Assert.IsType<SeriesAnswer.Stored>(
            await writer.WriteAsync([text], Ct));
        var chain = await plant.AddChainAsync();
        await AddAsync(plant, chain, count: 20);
        await AddAsync(plant, chain, count: 1, TelemetryKind.Length);
        await AddAsync(plant, chain, count: 20, first: 20);
        Assert.Equal((new SeriesAnswer.Stored(), 41), await plant.Get<Outbox>().SendAsync(Ct));
        await using var db = plant.Db();
        var parked = await db.Parked.SingleAsync(Ct);
        Assert.Contains("type", parked.Reason, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(
            TelemetryKind.Length, await db.Telemetry.Where(t => t.Id == parked.TelemetryId).Select(t => t.Kind).SingleAsync(Ct));
        Assert.Equal(40, (await plant.Get<SeriesReader>().QueryAsync("SELECT count(value) FROM temperature", null, Ct)).Single()
            .Number(0, 1));
    }

    [Fact]
    public async Task While_the_store_is_away_rows_wait_and_a_missing_database_is_told_as_what_it_is()
    {
        await using var influx = new InfluxServer();
        await influx.StartAsync(Ct);
        await using var plant = await TestPlant.OpenAsync(("Influx:Url", $"{influx.Url}"));
        await AddAsync(plant, await plant.AddChainAsync(), count: 5);
        await influx.KillAsync(Ct);
        Assert.IsType<SeriesAnswer.Away>((await plant.Get<Outbox>().SendAsync(Ct))!.Value.Answer);
        Assert.Equal(5, await plant.Get<Outbox>().LengthAsync(Ct));
        await influx.StartAsync(Ct);
        using (var lost = new SeriesWriter(influx.Address("nowhere"))) Assert.IsType<SeriesAnswer.ShutOut>(
            await lost.WriteAsync(["a value=1 1"], Ct));
        Assert.Equal((new SeriesAnswer.Stored(), 5), await plant.Get<Outbox>().SendAsync(Ct));
        await Assert.ThrowsAsync<SeriesQueryException>(() => plant.Get<SeriesReader>().QueryAsync("SELEC value", null, Ct));
    }

    private static async Task AddAsync(
        TestPlant plant, int chain, int count, TelemetryKind kind = TelemetryKind.Temperature, int first = 0)
    {
        await using var db = plant.Db();
        db.Telemetry.AddRange(Enumerable.Range(first, count).Select(i => new TelemetryRow
        {
            MessageId = $"{kind} {i}",
            ChainId = chain,
            Kind = kind,
            At = TestPlant.Start.AddTicks(i),
            Value = 20 + i,
            AwaitsForwarding = true,
        }));
        await db.SaveChangesAsync(Ct);
    }
}
