using Microsoft.EntityFrameworkCore;
using WearWatch.Planning.Plans;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>What the plant says of its store, its stops and its readings decides what a proposal may use.</summary>
public sealed class PreparationTests : IAsyncLifetime
{
    private PlannedMill mill = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => mill = await PlannedMill.OpenAsync();

    public ValueTask DisposeAsync() => mill.DisposeAsync();

    [Fact]
    public async Task A_stop_within_the_frozen_hours_is_left_as_it_is()
    {
        await ChangeAsync(costs => costs.FrozenHours = 24 * 12);
        var draft = await mill.ProposedAsync();
        var frozen = draft.Picture.Input.FrozenUntil;
        Assert.Equal(draft.Picture.Input.Now.AddHours(24 * 12), frozen);
        Assert.Contains(draft.Picture.Input.Windows, w => w.Start < frozen);
        Assert.All(draft.Plan.Placements, p => Assert.False(p.Window?.Start < frozen));
        Assert.Contains(draft.Plan.Placements, p => p.Window is not null);
    }

    [Fact]
    public async Task What_is_kept_in_a_stop_that_is_frozen_now_stays_in_it()
    {
        var draft = await mill.ProposedAsync();
        var first = draft.Picture.Input.Windows.Where(w => w.Line == "Debarking").MinBy(w => w.Start)!;
        draft.Move("D-2", first.Id);
        draft.Hold("D-2", SwapPlacing.Proposed);
        await mill.KeepAsync(draft);
        await ChangeAsync(costs => costs.FrozenHours = 24 * 12);
        Assert.Equal(first.Id, (await mill.ProposedAsync()).PlaceOf("D-2").WindowId);
    }

    [Fact]
    public async Task A_chain_without_a_reading_is_named_to_be_measured_and_gets_no_shutdown()
    {
        await using (var db = mill.Db())
        {
            await db.Forecasts.Where(f => f.ChainId == 1)
                .ExecuteUpdateAsync(set => set.SetProperty(f => f.ReadingsUsed, 0), Ct);
        }

        var draft = await mill.ProposedAsync();
        Assert.Null(draft.PlaceOf("D-1").WindowId);
        Assert.Contains(draft.Plan.Remarks, r => r is { Kind: PlanRemarkKind.MeasureFirst, Subject: "D-1" });
    }

    [Fact]
    public async Task The_store_says_how_fast_an_express_order_comes_and_nothing_at_all_is_a_figure_too()
    {
        await using (var db = mill.Db())
        {
            var spare = await db.Spares.SingleAsync(Ct);
            Assert.Equal(SpareRow.UsualExpressLeadDays, spare.ExpressLeadDays);
            db.Spares.Add(new SpareRow { Kind = "Chain", Designation = "20B-1", LeadDays = 28, ExpressLeadDays = 0 });
            await db.SaveChangesAsync(Ct);
        }

        await using var again = mill.Db();
        Assert.Equal(0, (await again.Spares.SingleAsync(s => s.Designation == "20B-1", Ct)).ExpressLeadDays);
    }

    private async Task ChangeAsync(Action<PlanningCostsRow> change)
    {
        var costs = CostRows.Usual();
        change(costs);
        await mill.Get<PlanInputs>().SaveAsync(costs, [], Ct);
    }
}
