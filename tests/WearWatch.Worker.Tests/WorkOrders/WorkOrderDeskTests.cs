using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Planning;
using WearWatch.Plant.WorkOrders;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.WorkOrders;

/// <summary>Reports on work orders: what agrees counts as a person's report after the stop, the rest is settled.</summary>
public sealed class WorkOrderDeskTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_order_goes_from_open_to_done_and_done_is_the_event_the_stock_and_the_hours_with_undo()
    {
        await using var mill = await OrderedMill.OpenAsync();
        await mill.ReportAsync(WorkOrderState.Open);
        await mill.ReportAsync(WorkOrderState.InWork, number: "");
        var order = (await mill.OrderAsync())!;
        Assert.Equal(("4711", WorkOrderState.InWork), (order.Number, order.State));
        await using (var db = mill.Db()) Assert.Equal(order, (await db.PlannedOrdersAsync(Ct))[mill.ChainId]);
        Assert.Empty(await mill.EventsAsync());

        var done = mill.Told(WorkOrderState.Done) with
        {
            HoursWorked = 3.5,
            Material = [new("16B-1 chain", 90), new("16B-1 z17 sprocket", 1)],
            Note = "new clamps",
        };
        Assert.IsType<IntakeAnswer.Taken>(await mill.ReportAsync(done));
        var swap = await mill.SwapAsync();
        Assert.Equal((SwapEnd.Done, 3.5, "new clamps", "orders"),
            (swap.Outcome, swap.HoursWorked, swap.OutcomeNote, swap.OutcomeBy));
        Assert.Equal(70, await mill.StockAsync());
        Assert.Equal([ChainEventKind.Replacement, ChainEventKind.SprocketReplaced],
            (await mill.EventsAsync()).Select(e => e.Kind).Order());
        Assert.All(await mill.EventsAsync(), e => Assert.Equal(done.DoneAt, e.At));

        Assert.Null(await mill.AfterStop.UndoAsync(swap.Id, "planner", Ct));
        Assert.Equal((160, 0), (await mill.StockAsync(), (await mill.EventsAsync()).Count));
        // Told once more it contradicts the person who took it back.
        Assert.IsType<IntakeAnswer.Waiting>(await mill.ReportAsync(done));
    }

    [Fact]
    public async Task Without_a_word_on_material_the_stock_falls_by_what_such_a_swap_takes_and_with_none_it_stays()
    {
        await using (var mill = await OrderedMill.OpenAsync())
        {
            await mill.ReportAsync(WorkOrderState.Done);
            Assert.InRange(await mill.StockAsync(), 60, 81);
        }

        await using var other = await OrderedMill.OpenAsync();
        await other.ReportAsync(other.Told(WorkOrderState.Done) with { Material = [] });
        Assert.Equal((160, SwapEnd.Done), (await other.StockAsync(), (await other.SwapAsync()).Outcome));
    }

    [Fact]
    public async Task The_same_key_is_one_report_and_with_other_words_it_is_refused()
    {
        await using var mill = await OrderedMill.OpenAsync();
        var told = new NewWorkOrderReport(mill.Told(WorkOrderState.Done), "one", "orders");
        Assert.False(Assert.IsType<IntakeAnswer.Taken>(await mill.Desk.TakeAsync(told, Ct)).AlreadyKnown);
        Assert.True(Assert.IsType<IntakeAnswer.Taken>(await mill.Desk.TakeAsync(told, Ct)).AlreadyKnown);
        Assert.Single(await mill.EventsAsync());
        var others = told with { Told = told.Told with { Number = "4712" } };
        Assert.Equal("key", Assert.Single(
            Assert.IsType<IntakeAnswer.Refused>(await mill.Desk.TakeAsync(others, Ct)).Refusals).Field);
    }

    [Theory]
    [InlineData("swap")]
    [InlineData("done_at")]
    [InlineData("hours_worked")]
    [InlineData("material")]
    [InlineData("note")]
    [InlineData("order_number")]
    public async Task What_cannot_be_is_refused_by_its_field_and_nothing_is_kept(string field)
    {
        await using var mill = await OrderedMill.OpenAsync();
        var told = mill.Told(WorkOrderState.Done);
        var wrong = field switch
        {
            "swap" => told with { Swap = " " },
            "done_at" => told with { DoneAt = mill.Now.AddDays(3) },
            "hours_worked" => told with { HoursWorked = -1 },
            "material" => told with { Material = [new("16B-1 chain", 0)] },
            "note" => told with { Note = new string('x', 401) },
            _ => told with { Number = new string('1', 81) },
        };
        Assert.Equal(field, Assert.Single(
            Assert.IsType<IntakeAnswer.Refused>(await mill.ReportAsync(wrong)).Refusals).Field);
        await using var db = mill.Db();
        Assert.False(await db.WorkOrderReports.AnyAsync(Ct));
    }

    [Fact]
    public async Task What_a_process_stored_and_did_not_work_off_is_worked_off_once()
    {
        await using var mill = await OrderedMill.OpenAsync();
        await using (var db = mill.Db())
        {
            db.WorkOrderReports.Add(new NewWorkOrderReport(mill.Told(WorkOrderState.Done), "k", "orders").ToRow(mill.Now));
            await db.SaveChangesAsync(Ct);
        }

        // Killed after the swap was done, and before that was said of the report.
        var told = new SwapDone(mill.Now.AddHours(-1), null, "", Broke: false, TakeUpMm: null, "") { Confirmed = true };
        await mill.AfterStop.DoneAsync((await mill.SwapAsync()).Id, told, "orders", Ct);
        var stock = await mill.StockAsync();
        Assert.Equal((1, 0), (await mill.Desk.WorkOffAsync(Ct), await mill.Desk.WorkOffAsync(Ct)));
        Assert.Equal((stock, 1), (await mill.StockAsync(), (await mill.EventsAsync()).Count));
        Assert.Equal(WorkOrderState.Done, (await mill.OrderAsync())!.State);
    }

    [Fact]
    public async Task Two_that_work_off_at_once_do_everything_once()
    {
        await using var mill = await OrderedMill.OpenAsync();
        await using (var db = mill.Db())
        {
            var unknown = Enumerable.Range(0, 8).Select(i => mill.Told(WorkOrderState.Open, $"swap-9{i}"));
            WorkOrderAsWritten[] told = [mill.Told(WorkOrderState.Done), .. unknown];
            db.WorkOrderReports.AddRange(told.Select((t, i) => new NewWorkOrderReport(t, $"k{i}", "orders").ToRow(mill.Now)));
            await db.SaveChangesAsync(Ct);
        }

        await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => mill.Desk.WorkOffAsync(Ct), Ct)));
        Assert.InRange(await mill.StockAsync(), 60, 81);
        Assert.Single(await mill.EventsAsync());
        await using var after = mill.Db();
        Assert.Contains("8 reports", (await after.PlantNotices.SingleAsync(Ct)).Why.ToString(), StringComparison.Ordinal);
        Assert.Equal(1, await after.WorkOrderReports.CountAsync(r => r.Standing == WorkOrderStanding.Used, Ct));
    }
}
