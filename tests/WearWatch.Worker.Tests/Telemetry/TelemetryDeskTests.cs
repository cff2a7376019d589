using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Telemetry;
using WearWatch.Signals;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Telemetry;

public sealed class TelemetryDeskTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_second_delivery_changes_nothing_in_one_batch_or_in_another()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var message = Sent.Temperature(31.5);
        Assert.Equal(new TelemetryTaken(1, 1, 0), await TakeAsync(plant, message, message));
        Assert.Equal(new TelemetryTaken(1, 1, 0), await TakeAsync(plant, message, Sent.Temperature(33)));
        await using var db = plant.Db();
        Assert.Equal([31.5, 33], await db.Telemetry.OrderBy(t => t.Id).Select(t => t.Value).ToListAsync(Ct));
        var hour = await db.TelemetryHours.SingleAsync(Ct);
        Assert.Equal((2, 64.5, 31.5, 33), (hour.Count, hour.Sum, hour.Min, hour.Max));
    }

    [Fact]
    public async Task Hours_are_summed_by_chain_kind_and_hour()
    {
        await using var plant = await TestPlant.OpenAsync();
        var (first, second) = (await plant.AddChainAsync(), await plant.AddChainAsync("C2"));
        var start = TestPlant.Start;
        await TakeAsync(
            plant, Sent.Temperature(20, at: start.AddHours(-2)), Sent.Temperature(22, at: start.AddHours(-1).AddTicks(-10_000)),
            Sent.Temperature(24, at: start.AddHours(-1)), Sent.Temperature(50, "C2", start.AddHours(-1)),
            Sent.Of("running", "\"on\":true", at: start.AddHours(-1)));
        await using var db = plant.Db();
        var hours = await db.TelemetryHours.OrderBy(h => h.ChainId).ThenBy(h => h.Kind).ThenBy(h => h.Hour)
            .Select(h => new { h.ChainId, h.Kind, h.Hour, h.Count, h.Sum }).ToListAsync(Ct);
        Assert.Equal(
            [(first, TelemetryKind.RunningSwitch, -1, 1L, 1.0), (first, TelemetryKind.Temperature, -2, 2L, 42.0),
                (first, TelemetryKind.Temperature, -1, 1L, 24.0), (second, TelemetryKind.Temperature, -1, 1L, 50.0)],
            hours.Select(h => (h.ChainId, h.Kind, (int)(h.Hour - start).TotalHours, h.Count, h.Sum)));
    }

    [Fact]
    public async Task What_cannot_be_used_is_set_aside_with_its_reason_and_holds_nothing_up()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        Arrival[] bad =
        [
            Sent.Raw("wearwatch/v1/plant/C1/running", "{"), Sent.Temperature(chain: "C9"),
                Sent.Temperature(at: TestPlant.Start.AddHours(2)),
            Sent.Temperature(at: TestPlant.Start.AddDays(-40)),
        ];
        Assert.Equal(new TelemetryTaken(1, 0, 4), await TakeAsync(plant, [.. bad, Sent.Temperature()]));
        Assert.Equal(new TelemetryTaken(0, 0, 4), await TakeAsync(plant, bad));
        await using var db = plant.Db();
        var aside = await db.SetAside.OrderBy(s => s.Id).ToListAsync(Ct);
        Assert.All(aside, s => Assert.Equal(2, s.Times));
        Assert.Equal(bad.Select(b => b.Payload.ToArray()),
            aside.OrderBy(s => Array.FindIndex(bad, b => b.Payload.Span.SequenceEqual(s.Payload))).Select(s => s.Payload));
        foreach (var reason in new[] { "Not JSON", "no chain 'C9'", "future", "its day is closed" })
            Assert.Single(aside, s => s.Reason.ToString().Contains(reason, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_id_that_comes_again_with_something_else_is_set_aside()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        Assert.Equal(
            new TelemetryTaken(1, 0, 1), await TakeAsync(plant, Sent.Temperature(20, id: "x"), Sent.Temperature(21, id: "x")));
        Assert.Equal(
            new TelemetryTaken(0, 1, 1), await TakeAsync(plant, Sent.Temperature(22, id: "x"), Sent.Temperature(20, id: "x")));
        await using var db = plant.Db();
        Assert.Equal(20, (await db.Telemetry.SingleAsync(Ct)).Value);
        Assert.All(await db.SetAside.ToListAsync(Ct),
            s => Assert.Contains("id came before", s.Reason.ToString(), StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_message_is_released_once_its_chain_is_registered()
    {
        await using var plant = await TestPlant.OpenAsync();
        await TakeAsync(plant, Sent.Temperature(31.5, "C9"));
        await using var db = plant.Db();
        var id = await db.SetAside.Select(s => s.Id).SingleAsync(Ct);
        var refused = await plant.Get<SetAsideDesk>().ReleaseAsync(id, "test", Ct);
        Assert.Contains("no chain 'C9'", refused?.ToString(), StringComparison.Ordinal);
        await plant.AddChainAsync("C9");
        Assert.Null(await plant.Get<SetAsideDesk>().ReleaseAsync(id, "test", Ct));
        Assert.Equal(31.5, (await db.Telemetry.SingleAsync(Ct)).Value);
        Assert.Equal((Settlement.Released, "test"),
            await db.SetAside.Select(s => new ValueTuple<Settlement, string>(s.Settlement, s.SettledBy)).SingleAsync(Ct));
    }

    [Fact]
    public async Task Two_desks_on_one_database_store_each_message_once()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var messages = Enumerable.Range(0, 600).Select(i => Sent.Temperature(i / 10.0)).ToArray();
        await Task.WhenAll(Enumerable.Range(0, 4).Select(worker => Task.Run(async () =>
        {
            foreach (var some in messages.Skip(worker * 37).Concat(messages.Take(worker * 37)).Chunk(50))
                await TakeAsync(plant, some);
        })));
        await using var db = plant.Db();
        Assert.Equal(600, await db.Telemetry.CountAsync(Ct));
        Assert.Equal(600, await db.TelemetryHours.SumAsync(h => h.Count, Ct));
        Assert.Equal(messages.Length * 599 / 20.0, await db.TelemetryHours.SumAsync(h => h.Sum, Ct), 6);
    }

    private static Task<TelemetryTaken> TakeAsync(TestPlant plant, params Arrival[] arrivals) =>
        plant.Get<TelemetryDesk>().TakeAsync(arrivals, Ct);
}
