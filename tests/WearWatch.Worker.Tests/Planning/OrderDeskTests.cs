using WearWatch.Planning.Supply;
using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>An order from its sending to the stock, and what the plan counts on meanwhile.</summary>
public sealed class OrderDeskTests
{
    private static readonly Part Chain = new(PartKind.Chain, "16B-1");

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_is_ordered_is_counted_on_and_what_has_come_lies_in_the_stock()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<OrderDesk>();
        Assert.True((await desk.OrderAsync(
            new NewPurchase(Chain, 160, Day(mill, 10)) { Supplier = "North chain works", Price = 2.8 }, "planner", Ct)).IsEmpty);
        var spare = await SpareAsync(mill);
        Assert.Equal((160, 160), (spare.InStock, Assert.Single(spare.OnOrder).Quantity));
        var order = Assert.Single(await desk.AskAsync(Ct));
        Assert.Equal((PurchaseState.Ordered, 448.0, false), (order.Row.State, order.Sum, order.IsLate));

        Assert.True((await desk.ConfirmAsync(order.Row.Id, Day(mill, 20), "by letter", "planner", Ct)).IsEmpty);
        Assert.Equal(Day(mill, 20), DateOnly.FromDateTime((await SpareAsync(mill)).OnOrder[0].Due.UtcDateTime));
        Assert.True((await desk.ReceiveAsync(order.Row.Id, 150, "planner", Ct)).IsEmpty);
        spare = await SpareAsync(mill);
        Assert.Equal((310, 0), (spare.InStock, spare.OnOrder.Count));
        order = Assert.Single(await desk.AskAsync(Ct));
        Assert.Equal(
            [PurchaseState.Ordered, PurchaseState.Confirmed, PurchaseState.Received], order.Row.Steps.Select(s => s.State));
        Assert.Equal((150, "North chain works"), (order.Row.ReceivedQuantity, order.Row.Supplier));
    }

    [Fact]
    public async Task A_late_order_is_counted_on_a_week_from_now_and_the_plan_moves()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.Get<PlanInputs>().SaveAsync(
            new Spare
            {
                Part = Chain,
                PackSize = 160,
                Price = 3,
                LeadTime = TimeSpan.FromDays(90),
                ExpressLeadTime = TimeSpan.FromDays(90),
            },
            [], Ct);
        var desk = mill.Get<OrderDesk>();
        await desk.OrderAsync(new NewPurchase(Chain, 480, Day(mill, 3)), "planner", Ct);
        var inTime = (await mill.ProposedAsync()).Plan.Placements.Single(p => p.Chain == "D-1").Window!.Start;
        mill.Pass(TimeSpan.FromDays(4));
        var order = Assert.Single(await desk.AskAsync(Ct));
        Assert.True(order.IsLate);
        Assert.Equal(Day(mill, PurchaseLine.DaysMoreWhenLate), order.CountedOn);
        var late = (await mill.ProposedAsync()).Plan.Placements.Single(p => p.Chain == "D-1").Window!.Start;
        Assert.True(late > inTime, $"{late} is not later than {inTime}.");
        Assert.Equal(1, (await SpareAsync(mill)).OnOrder.Count(d => d.Due > mill.Now));
    }

    [Fact]
    public async Task An_order_ends_once_and_what_is_cancelled_is_counted_on_no_more()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<OrderDesk>();
        await desk.OrderAsync(new NewPurchase(Chain, 160, Day(mill, 10)), "planner", Ct);
        var id = Assert.Single(await desk.AskAsync(Ct)).Row.Id;
        Assert.False((await desk.CancelAsync(id, " ", "planner", Ct)).IsEmpty);
        Assert.True((await desk.CancelAsync(id, "ordered twice", "planner", Ct)).IsEmpty);
        Assert.False((await desk.ReceiveAsync(id, 160, "planner", Ct)).IsEmpty);
        var spare = await SpareAsync(mill);
        Assert.Equal((160, 0), (spare.InStock, spare.OnOrder.Count));
    }

    [Fact]
    public async Task What_cannot_be_ordered_is_refused_with_its_reason()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var desk = mill.Get<OrderDesk>();
        NewPurchase[] wrong =
        [
            new(Chain, 0, Day(mill, 5)), new(Chain, 1, Day(mill, -1)), new(Chain, 1, Day(mill, 5)) { Price = -1 },
            new(new Part(PartKind.Chain, " "), 1, Day(mill, 5)),
        ];
        foreach (var order in wrong) Assert.False((await desk.OrderAsync(order, "planner", Ct)).IsEmpty);
        Assert.Empty(await desk.AskAsync(Ct));
    }

    private static DateOnly Day(PlannedMill mill, int days) => DateOnly.FromDateTime(mill.Now.UtcDateTime).AddDays(days);

    private static async Task<Spare> SpareAsync(PlannedMill mill) =>
        (await mill.DraftAsync()).Picture.Input.Spares.Single(s => s.Part == Chain);
}
