using System.Text;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Telemetry;
using WearWatch.Signals;
using WearWatch.Storage.Rows;
using WearWatch.Worker.Tests.Mappings;
using WearWatch.Worker.Tests.Sparkplug;

namespace WearWatch.Worker.Tests.Fuzz;

/// <summary>
/// Foreign messages that nobody meant, from a fixed seed, among good ones: each good one is stored as it says, none stops the
/// intake.
/// </summary>
public sealed class ForeignFuzzTests
{
    private const int AtOnce = 500;
    private const int Seed = 22;
    private const double LargestCounterH = 1e7;

    private static readonly string[] odd =
    [
        "null", "-1", "1e309", "\"\"", "\"\\u0000\"", "[]", "{}", "true", "\"1.5\"", "\"0001-01-01T00:00:00Z\"",
        "99999999999999999999", "\"\\ud800\"", "[[[[[[[[[[[[[[]]]]]]]]]]]]]]", "1e15", "-0.0", "\"h\\u0000\"", "\"d\"",
    ];

    /// <summary>Names and numbers as no birth should have them.</summary>
    private static readonly (string Name, int? Alias, object Value)[] oddMetrics =
    [
        ("Drive/Hours", 1, double.NaN), ("Drive/Hours", 1, double.PositiveInfinity), ("Drive/Hours", 1, -1.0),
        ("Drive/Hours", 1, 1e300), ("Drive/Hours", null, long.MinValue), ("Drive/Hours\0", 1, 5.0), ("\0", 3, 5.0),
        (string.Concat(Enumerable.Range(0x4e00, 5_000).Select(c => (char)c)), 4, 1.0), ("bdSeq", null, -5L), ("", 77, 1.0),
        ("", null, 1.0),
    ];

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(4_000)]
    [InlineData(20_000, Explicit = true)]
    public async Task No_foreign_message_stops_the_intake_and_good_ones_are_stored_as_they_say(int messages)
    {
        await using var plant = await PlantAsync();
        var (dice, good) = (new Random(Seed), new List<double>());
        var before = GC.GetTotalMemory(forceFullCollection: true);
        for (var i = 0; i < messages; i += AtOnce)
        {
            await plant.Get<TelemetryDesk>().TakeAsync(
                [.. Enumerable.Range(i, AtOnce).Select(n => n % 2 == 0 ? Json(dice, n, good) : Node(dice, n))], Ct);
        }

        Assert.InRange(GC.GetTotalMemory(forceFullCollection: true) - before, long.MinValue, 100_000_000);
        await using var db = plant.Db();
        var stored = await db.Telemetry.Join(db.Chains, t => t.ChainId, c => c.Id, (t, c) => new { c.Name, t.Value, t.At })
            .ToListAsync(Ct);
        Assert.Empty(good.Except(stored.Where(t => t.Name == "C1").Select(t => t.Value)));
        Assert.Contains(stored, t => t.Name == "N1");
        Assert.Contains(stored, t => t.Name == "PLC");
        Assert.All(stored, t => Assert.InRange(t.Value, 0, LargestCounterH));
        Assert.All(stored, t => Assert.True(t.At <= TestPlant.Start + TelemetryDesk.Ahead));
        Assert.True(await db.SetAside.AnyAsync(Ct));
    }

    private static async Task<TestPlant> PlantAsync()
    {
        var plant = await TestPlant.OpenAsync();
        foreach (var name in new[] { "C1", "N1", "PLC" }) await plant.AddChainAsync(name);
        await Mapped.SaveAsync(plant, Mapped.Row(unit: "$.unit"));
        foreach (var (topic, chain) in new[] { ("Mill/{node}", "{node}"), ("Mill/+/{device}", "{device}") })
            await Mapped.SaveAsync(
                plant,
                new SignalMappingRow
                {
                    Name = chain,
                    Source = SignalSource.SparkplugMetric,
                    Topic = topic,
                    ValuePath = "Drive/Hours",
                    Chain = chain,
                    SavedBy = "",
                });
        return plant;
    }

    /// <summary>A message of the mapped topic; the hours of one that is as it should be are kept in a list.</summary>
    private static Arrival Json(Random dice, int n, List<double> good)
    {
        var topic = dice.Next(8) == 0 ? "site/A/x/nobody/hours" : "site/A/x/C1/hours";
        string[] told = [$"{n}", $"{TestPlant.Start.AddMinutes(-90).ToUnixTimeSeconds() + n % 5_000}", "\"h\""];
        var isGood = dice.Next(2) == 0;
        if (!isGood) told[dice.Next(told.Length)] = odd[dice.Next(odd.Length)];
        var text = $$"""{"run":{"tenths":{{told[0]}}},"t":{{told[1]}},"unit":{{told[2]}}}""";
        if (isGood && topic.Contains("C1", StringComparison.Ordinal)) good.Add((double)(n * 0.1m));
        return new Arrival(topic, isGood ? Encoding.UTF8.GetBytes(text) : Bent(dice, Encoding.UTF8.GetBytes(text)));
    }

    /// <summary>A message of an edge node or its device, of which half are bent.</summary>
    private static Arrival Node(Random dice, int n)
    {
        var (at, seq) = (TestPlant.Start.AddMinutes(-90).AddSeconds(n % 5_000), dice.Next(300));
        var message = dice.Next(10) switch
        {
            0 => SparkplugMessage.NodeBirth(dice.Next(3), n, at, seq),
            1 => SparkplugMessage.NodeDeath(dice.Next(3), at),
            2 or 3 => SparkplugMessage.DeviceBirth(n, at, seq),
            4 => SparkplugMessage.Of("DDEATH/N1/PLC", at, seq),
            5 => SparkplugMessage.Of(
                dice.Next(2) == 0 ? "NBIRTH/N1" : "DBIRTH/N1/PLC", at, seq, oddMetrics[dice.Next(oddMetrics.Length)]),
            6 => SparkplugMessage.Of("NDATA/N1", at, seq, oddMetrics[dice.Next(oddMetrics.Length)]),
            7 => SparkplugMessage.DeviceData(n, at, seq),
            _ => SparkplugMessage.NodeData(n, at, seq),
        };
        if (dice.Next(30) == 0)
            message = message with { Topic = message.Topic.Replace("N1", $"X{dice.Next(50)}", StringComparison.Ordinal) };
        if (dice.Next(40) == 0) message = message with { Topic = message.Topic + "/more" };
        return dice.Next(2) == 0 ? message : message with { Payload = Bent(dice, message.Payload.ToArray()) };
    }

    /// <summary>Flips bytes, cuts it off, says it twice, or leaves it.</summary>
    private static byte[] Bent(Random dice, byte[] payload)
    {
        for (var flips = dice.Next(4); flips > 0 && payload.Length > 0; flips--)
            payload[dice.Next(payload.Length)] = (byte)dice.Next(256);
        return dice.Next(6) switch
        {
            0 => payload[..dice.Next(payload.Length + 1)],
            1 => [.. payload, .. payload],
            _ => payload,
        };
    }
}
