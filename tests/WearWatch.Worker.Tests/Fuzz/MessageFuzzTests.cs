using System.Text;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Worker.Tests.Fuzz;

/// <summary>
/// Messages that no machine means, from a fixed seed: each is stored or set aside with its reason, none stops the intake.
/// </summary>
public sealed class MessageFuzzTests
{
    private const int Messages = 20_000;
    private const int AtOnce = 500;
    private const int Seed = 22;

    private static readonly string[] topics =
    [
        "wearwatch/v1/plant/C1/running", "wearwatch/v1/plant/C1/length", "wearwatch/v1/plant/C1/passes",
        "wearwatch/v1/plant/C1/oiling", "wearwatch/v1/plant/C1/temperature", "wearwatch/v1/plant/nobody/running",
        "wearwatch/v1/plant/%2F%2F/running", "wearwatch/v2/plant/C1/running", "nonsense", "wearwatch/v1/plant/C1/%",
        "wearwatch/v1/plant//running",
    ];

    private static readonly string[] fields =
    [
        "\"counter_h\":1234.5", "\"on\":true", "\"pulses\":7", "\"pitches\":40,\"length_mm\":1020.5", "\"temperature_c\":31",
        "\"first_us\":[0,25000],\"second_us\":[100,25100]", "\"amount_cm3\":0.5",
    ];

    private static readonly string[] odd =
    [
        "null", "-1", "1e309", "\"\"", "\"\\u0000\"", "[]", "{}", "true", "\"0001-01-01T00:00:00Z\"", "\"9999-12-31T23:59:59Z\"",
        "99999999999999999999", "\"\\ud800\"", "[[[[[[[[[[[[[[]]]]]]]]]]]]]]",
    ];

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task No_message_stops_the_intake_and_memory_stays_bounded()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var dice = new Random(Seed);
        var desk = plant.Get<TelemetryDesk>();
        var before = GC.GetTotalMemory(forceFullCollection: true);
        for (var i = 0; i < Messages; i += AtOnce)
            await desk.TakeAsync([.. Enumerable.Range(i, AtOnce).Select(n => Message(dice, n))], Ct);
        Assert.InRange(GC.GetTotalMemory(forceFullCollection: true) - before, long.MinValue, 100_000_000);
        await using var db = plant.Db();
        Assert.True(await db.Telemetry.AnyAsync(Ct));
        Assert.True(await db.SetAside.AnyAsync(Ct));
        Assert.False(await db.Telemetry.AnyAsync(t => t.At > TestPlant.Start.AddDays(2) || t.Value < -1e9 || t.Value > 1e15, Ct));
    }

    private static Arrival Message(Random dice, int n)
    {
        var id = dice.Next(10) == 0 ? odd[dice.Next(odd.Length)] : $"\"{n}\"";
        var at = dice.Next(6) == 0 ? odd[dice.Next(odd.Length)] : "\"2026-06-01T09:00:00Z\"";
        var field = fields[dice.Next(fields.Length)];
        if (dice.Next(4) == 0) field = $"{field[..(field.IndexOf(':') + 1)]}{odd[dice.Next(odd.Length)]}";
        var payload = Encoding.UTF8.GetBytes($"{{\"id\":{id},\"at\":{at},{field}}}");
        for (var flips = dice.Next(5) == 0 ? dice.Next(6) : 0; flips > 0; flips--)
            payload[dice.Next(payload.Length)] = (byte)dice.Next(256);
        return new Arrival(topics[dice.Next(topics.Length)], payload);
    }
}
