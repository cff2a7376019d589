using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Planning;
using WearWatch.Plant.WorkOrders;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Worker.Tests.Planning;

namespace WearWatch.Worker.Tests.WorkOrders;

/// <summary>The small mill with a saved plan whose first stop has begun, and another system that reports on its swaps.</summary>
internal sealed class OrderedMill(PlannedMill mill, SwapRow first) : IAsyncDisposable
{
    private int sent;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>The swap of the stop that has begun.</summary>
    public string First { get; } = SwapId.Of(first.Id);

    public int ChainId => first.ChainId;

    /// <summary>The name of its chain.</summary>
    public async Task<string> ChainAsync()
    {
        await using var db = Db();
        return (await db.Chains.SingleAsync(c => c.Id == first.ChainId, Ct)).Name;
    }

    public PlannedMill Mill => mill;

    public WorkOrderDesk Desk => mill.Get<WorkOrderDesk>();

    public AfterStopDesk AfterStop => mill.Get<AfterStopDesk>();

    public DateTimeOffset Now => mill.Now;

    public static async Task<OrderedMill> OpenAsync()
    {
        var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        var first = (await mill.SwapsAsync()).Where(s => s.Start is not null).MinBy(s => s.Start)!;
        mill.Pass(first.Start!.Value.AddHours(4) - mill.Now);
        return new OrderedMill(mill, first);
    }

    /// <summary>Reports, each time under another key.</summary>
    public Task<IntakeAnswer> ReportAsync(WorkOrderAsWritten told) =>
        Desk.TakeAsync(new NewWorkOrderReport(told, $"k{++sent}", "orders"), Ct);

    public Task<IntakeAnswer> ReportAsync(WorkOrderState state, string? swap = null, string number = "4711") => ReportAsync(
        Told(state, swap, number));

    public WorkOrderAsWritten Told(WorkOrderState state, string? swap = null, string number = "4711") => new()
    {
        Swap = swap ?? First,
        Number = number,
        State = state,
        DoneAt = state == WorkOrderState.Done ? Now.AddHours(-1) : null,
    };

    public WearDb Db() => mill.Db();

    public async Task<SwapRow> SwapAsync()
    {
        await using var db = Db();
        return await db.Swaps.AsNoTracking().SingleAsync(s => s.Id == first.Id, Ct);
    }

    public async Task<int> StockAsync()
    {
        await using var db = Db();
        return (await db.Spares.SingleAsync(Ct)).InStock;
    }

    public async Task<IReadOnlyList<EventRow>> EventsAsync()
    {
        await using var db = Db();
        return await db.StandingEventsAsync(first.ChainId, Ct);
    }

    public async Task<WorkOrder?> OrderAsync()
    {
        await using var db = Db();
        return (await db.WorkOrdersAsync(db.Swaps, Ct)).GetValueOrDefault(first.Id);
    }

    public ValueTask DisposeAsync() => mill.DisposeAsync();
}
