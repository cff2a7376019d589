using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Phrases;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Planning;
using WearWatch.Plant.WorkOrders;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.WorkOrders;

/// <summary>Reports that contradict what is known here change nothing until a person settles them.</summary>
public sealed class WorkOrderSettlingTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Ours_is_kept_and_nothing_changes_and_the_notice_ends_with_the_last_conflict()
    {
        await using var mill = await OrderedMill.OpenAsync();
        await mill.ReportAsync(WorkOrderState.InWork);
        var back = Assert.IsType<IntakeAnswer.Waiting>(await mill.ReportAsync(WorkOrderState.Open));
        var stranger = Assert.IsType<IntakeAnswer.Waiting>(await mill.ReportAsync(WorkOrderState.Open, swap: "swap-99999"));
        await using var db = mill.Db();
        var notice = await db.PlantNotices.AsNoTracking().SingleAsync(Ct);
        Assert.Equal((PlantNoticeKind.WorkOrderConflict, null), (notice.Kind, notice.EndedAt));
        Assert.Contains("2 reports", notice.Why.ToString(), StringComparison.Ordinal);

        Says("can only be left", await mill.Desk.SettleAsync(stranger.Id, true, "planner", Ct));
        Assert.Null(await mill.Desk.SettleAsync(stranger.Id, false, "planner", Ct));
        Assert.Null(await mill.Desk.SettleAsync(back.Id, false, "planner", Ct));
        Assert.Null(await mill.Desk.SettleAsync(back.Id, false, "planner", Ct));
        Says("nothing to settle", await mill.Desk.SettleAsync(back.Id, true, "planner", Ct));
        Assert.Equal(WorkOrderState.InWork, (await mill.OrderAsync())!.State);
        Assert.NotNull((await db.PlantNotices.AsNoTracking().SingleAsync(Ct)).EndedAt);
    }

    [Fact]
    public async Task A_swap_that_a_person_reported_with_another_day_is_corrected_by_theirs_and_keeps_what_only_he_told()
    {
        await using var mill = await OrderedMill.OpenAsync();
        var swap = await mill.SwapAsync();
        var ours = new SwapDone(mill.Now.AddDays(-1).AddHours(2), null, "LOT-7", Broke: true, TakeUpMm: null, "seen")
        {
            NewLength = new MeasuredLength("1016.6", 40),
            HoursWorked = 2,
            WithSprockets = true,
        };
        Assert.IsType<IntakeAnswer.Taken>(await mill.AfterStop.DoneAsync(swap.Id, ours with { Confirmed = true }, "fitter", Ct));
        var stock = await mill.StockAsync();
        var theirs = mill.Told(WorkOrderState.Done) with { HoursWorked = 4 };
        var conflict = Assert.IsType<IntakeAnswer.Waiting>(await mill.ReportAsync(theirs));
        Assert.Null(await mill.Desk.SettleAsync(conflict.Id, true, "planner", Ct));

        swap = await mill.SwapAsync();
        Assert.Equal((SwapEnd.Done, 4.0, "seen"), (swap.Outcome, swap.HoursWorked, swap.OutcomeNote));
        var happened = (await mill.EventsAsync()).Single(e => e.Kind == ChainEventKind.Replacement);
        Assert.Equal((theirs.DoneAt, "LOT-7", true), (happened.At, happened.Lot, happened.Broke));
        Assert.Equal(2, (await mill.EventsAsync()).Count);
        Assert.Equal(stock, await mill.StockAsync());
        await using var db = mill.Db();
        var readings = await db.Readings.AsNoTracking().Where(r => r.ChainId == mill.ChainId).OrderBy(r => r.Id)
            .ToListAsync(Ct);
        Assert.Equal(1016.6, Assert.Single(StandingRows.Standing(readings)).LengthMm, 1e-9);
    }

    [Fact]
    public async Task Theirs_against_not_done_against_a_replacement_beside_the_plan_and_back_from_done_are_taken_as_told()
    {
        await using var mill = await OrderedMill.OpenAsync();
        var swap = await mill.SwapAsync();
        await mill.AfterStop.NotDoneAsync(swap.Id, "no crane", "fitter", Ct);
        var revision = (await mill.Mill.DraftAsync()).Picture.Revision;
        var done = Assert.IsType<IntakeAnswer.Waiting>(await mill.ReportAsync(WorkOrderState.Done));
        Assert.Contains("no crane", done.Why.ToString(), StringComparison.Ordinal);
        Assert.Null(await mill.Desk.SettleAsync(done.Id, true, "planner", Ct));
        Assert.Equal(SwapEnd.Done, (await mill.SwapAsync()).Outcome);
        Assert.Single(await mill.EventsAsync());
        Assert.True((await mill.Mill.DraftAsync()).Picture.Revision > revision);

        var back = Assert.IsType<IntakeAnswer.Waiting>(await mill.ReportAsync(WorkOrderState.InWork));
        Assert.Null(await mill.Desk.SettleAsync(back.Id, true, "planner", Ct));
        Assert.Equal((SwapEnd.Planned, 160, 0),
            ((await mill.SwapAsync()).Outcome, await mill.StockAsync(), (await mill.EventsAsync()).Count));

        var beside = A.Event(await mill.ChainAsync(), ChainEventKind.Replacement, at: mill.Now.AddHours(-2));
        await mill.Mill.Get<IntakeDesk>().TakeEventAsync(beside with { Confirmed = true }, Ct);
        var twice = Assert.IsType<IntakeAnswer.Waiting>(await mill.ReportAsync(WorkOrderState.Done));
        Assert.Null(await mill.Desk.SettleAsync(twice.Id, true, "planner", Ct));
        Assert.Equal(mill.Now.AddHours(-1), Assert.Single(await mill.EventsAsync()).At);
    }

    [Fact]
    public async Task A_moved_swap_is_told_and_theirs_counts_for_where_it_stands_now()
    {
        await using var mill = await OrderedMill.OpenAsync();
        await using var db = mill.Db();
        var old = await db.Swaps.SingleAsync(s => s.ChainId == mill.ChainId, Ct);
        old.Outcome = SwapEnd.Replaced;
        await db.SaveChangesAsync(Ct);
        var moved = new SwapRow
        {
            ChainId = mill.ChainId,
            WindowId = "later",
            Start = mill.Now.AddDays(14),
            DecidedAt = mill.Now,
        };
        db.Swaps.Add(moved);
        await db.SaveChangesAsync(Ct);
        var released = Assert.IsType<IntakeAnswer.Waiting>(await mill.ReportAsync(WorkOrderState.Released));
        Assert.Contains(SwapId.Of(moved.Id), released.Why.ToString(), StringComparison.Ordinal);
        Assert.Null(await mill.Desk.SettleAsync(released.Id, true, "planner", Ct));
        Assert.Equal("4711", (await db.PlannedOrdersAsync(Ct))[mill.ChainId].Number);

        var done = Assert.IsType<IntakeAnswer.Waiting>(await mill.ReportAsync(WorkOrderState.Done));
        Assert.Null(await mill.Desk.SettleAsync(done.Id, true, "planner", Ct));
        Assert.Equal([SwapEnd.Replaced, SwapEnd.Done], await db.Swaps.AsNoTracking().Where(s => s.ChainId == mill.ChainId)
            .OrderBy(s => s.Id).Select(s => s.Outcome).ToListAsync(Ct));
        Assert.Single(await mill.EventsAsync());
        // That the order of the old place is cancelled is as it should be.
        Assert.Equal(1, await db.Swaps.CountAsync(s => s.Outcome == SwapEnd.Replaced, Ct));
    }

    [Fact]
    public async Task A_part_that_nobody_knows_is_asked_about_and_theirs_leaves_its_stock_alone()
    {
        await using var mill = await OrderedMill.OpenAsync();
        var told = mill.Told(WorkOrderState.Done) with { Material = [new("grease", 2), new("16b-1 CHAIN", 80)] };
        var asked = Assert.IsType<IntakeAnswer.Waiting>(await mill.ReportAsync(told));
        Assert.Contains("grease", asked.Why.ToString(), StringComparison.Ordinal);
        Assert.Equal((160, SwapEnd.Planned), (await mill.StockAsync(), (await mill.SwapAsync()).Outcome));
        Assert.Null(await mill.Desk.SettleAsync(asked.Id, true, "planner", Ct));
        Assert.Equal((80, SwapEnd.Done), (await mill.StockAsync(), (await mill.SwapAsync()).Outcome));
    }

    private static void Says(string words, Phrase? why) => Assert.Contains(words, $"{why}", StringComparison.Ordinal);
}
