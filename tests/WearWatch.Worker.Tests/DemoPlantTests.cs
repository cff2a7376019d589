using Microsoft.EntityFrameworkCore;
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
