using System.Globalization;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests;

public sealed class DemoPlantTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_demo_mill_fills_an_empty_plant_once()
    {
        await using var plant = await TestPlant.OpenAsync();
        var first = await plant.Demo.LoadAsync(null, Ct);
        Assert.Equal(0, first.Refused);
        await using var db = plant.Db();
        Assert.Equal(80, await db.Chains.CountAsync(Ct));
        Assert.True((await db.Plants.SingleAsync(Ct)).IsDemo);
        Assert.Equal(await db.Chains.Select(c => c.Line).Distinct().CountAsync(Ct), await db.WindowRules.Select(r => r.Line)
            .Distinct().CountAsync(Ct));
        Assert.Empty((await db.Spares.ToListAsync(Ct)).Select(s => s.Designation)
            .Except(await db.Chains.Select(c => c.ChainType).ToListAsync(Ct)));
        var conditions = await db.Forecasts.Where(f => f.IsLatest).Select(f => f.Condition).Distinct().ToListAsync(Ct);
        Assert.Superset(
            new HashSet<Condition> { Condition.WithinLimit, Condition.PlanASwap, Condition.SwapNow }, conditions.ToHashSet());

        plant.Clock.Advance(TimeSpan.FromDays(2));
        var second = await plant.Demo.LoadAsync(null, Ct);
        Assert.Equal((0, 0, 0), (second.Taken, second.Waiting, second.Refused));
    }

    // Oracle: the mill's truth. A slip of the last digits, or one that a whole round hides, is no more than an ordinary reading.
    [Fact]
    public async Task Counters_that_the_mills_people_misread_wait_and_those_read_rightly_do_not()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.Demo.LoadAsync(null, Ct);
        await using var db = plant.Db();
        var names = await db.Chains.ToDictionaryAsync(c => c.Id, c => c.Name, Ct);
        var stored = (await db.Readings.ToListAsync(Ct)).ToDictionary(r => (names[r.ChainId], r.TakenAt, r.Place));
        var rows = File.ReadLines(Path.Combine(plant.Folder.Root, "demo", "truth", "readings.csv")).Skip(1)
            .Select(line => line.Split(',')).Select(row => (
                Told: stored[(row[0], (DateTimeOffset?)DateTimeOffset.Parse(row[1], CultureInfo.InvariantCulture), row[2])],
                Life: row[0] + row[3], RunH: double.Parse(row[4], CultureInfo.InvariantCulture), Slip: row[^1])).ToList();
        var right = rows.Where(r => r.Slip == "None").ToList();
        var wrong = rows.Zip(rows.Skip(1)).Where(pair => pair.First.Life == pair.Second.Life
                && pair.First.Slip == "None" && pair.Second.Slip != "None")
            .Where(pair => (pair.Second.RunH - pair.First.RunH) is var gap && Math.Abs(
                pair.Second.Told.CounterH!.Value - pair.First.Told.CounterH!.Value - gap) > Math.Max(100, gap / 2))
            .Select(pair => pair.Second).ToList();

        Assert.NotEmpty(wrong);
        Assert.All(wrong, r => Assert.Equal(ReadingStanding.Waiting, r.Told.Standing));
        var asked = right.Count(r => r.Told.WhyWaiting.ToString().Contains("counter", StringComparison.Ordinal));
        Assert.True(asked <= 0.005 * right.Count, $"{asked} of {right.Count} counters that were read rightly wait.");
    }

    [Fact]
    public async Task The_demo_mill_is_not_loaded_into_a_real_plant()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        Assert.Equal(1, (await plant.Demo.LoadAsync(null, Ct)).Refused);
        await using var db = plant.Db();
        Assert.Equal(1, await db.Chains.CountAsync(Ct));
    }
}
