using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Planning;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Planning;

public sealed class AfterStopDeskTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_swap_that_was_done_starts_a_new_life_and_leaves_the_plan()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        var swap = (await mill.SwapsAsync())[0];
        var told = new SwapDone(mill.Now, null, "B-2", Broke: true, TakeUpMm: 12, "fine") { NewPitches = 118 };
        var answer = await mill.Get<AfterStopDesk>().DoneAsync(swap.Id, told, "fitter", TestContext.Current.CancellationToken);
        Assert.IsType<IntakeAnswer.Taken>(answer);
        await using var db = mill.Db();
        var happened = Assert.Single(await db.StandingEventsAsync(swap.ChainId, TestContext.Current.CancellationToken));
        Assert.Equal((ChainEventKind.Replacement, "B-2", true, 118, 12, "fine", "fitter"),
            (happened.Kind, happened.Lot, happened.Broke, happened.NewPitches, happened.TakeUpMm, happened.Note,
                happened.ToldBy));
        Assert.Equal(SwapEnd.Done, (await mill.SwapsAsync())[0].Outcome);
        // Told twice, it is one event.
        await mill.Get<AfterStopDesk>().DoneAsync(swap.Id, told, "fitter", TestContext.Current.CancellationToken);
        Assert.Single(await db.StandingEventsAsync(swap.ChainId, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Reported_once_more_with_other_facts_it_is_refused_and_the_first_report_stands()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        var (desk, swap) = (mill.Get<AfterStopDesk>(), (await mill.SwapsAsync())[0]);
        var told = new SwapDone(mill.Now, null, "B-2", Broke: false, TakeUpMm: null, "");
        await desk.DoneAsync(swap.Id, told, "fitter", Ct);
        Assert.IsType<IntakeAnswer.Refused>(await desk.DoneAsync(swap.Id, told with { Lot = "B-3" }, "another", Ct));
        await using var db = mill.Db();
        Assert.Equal("B-2", Assert.Single(await db.StandingEventsAsync(swap.ChainId, Ct)).Lot);
        Assert.Equal((SwapEnd.Done, 0), ((await mill.SwapsAsync())[0].Outcome, (await mill.SwapsAsync())[0].Undone));
    }

    [Fact]
    public async Task A_swap_that_was_not_done_comes_back_into_the_next_plan()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        var first = (await mill.SwapsAsync())[0].Id;
        await mill.Get<AfterStopDesk>()
            .NotDoneAsync(first, "chain did not come", "fitter", TestContext.Current.CancellationToken);
        var draft = await mill.DraftAsync();
        Assert.Equal(DraftPlace.Nowhere, draft.PlaceOf("D-1"));
        Assert.Contains("D-1", draft.Picture.Faces.Keys);
    }

    [Fact]
    public async Task Its_parts_leave_the_stock_once_and_come_back_when_the_report_is_taken_back()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        var (desk, swap) = (mill.Get<AfterStopDesk>(), (await mill.SwapsAsync())[0]);
        var told = new SwapDone(mill.Now, null, "", Broke: false, TakeUpMm: null, "") { NewPitches = 81, WithSprockets = true };
        await desk.DoneAsync(swap.Id, told, "fitter", Ct);
        await desk.DoneAsync(swap.Id, told, "fitter", Ct);
        // An odd number of pitches is cut one shorter and closed by an offset link; only chain is on record, 160 pitches of it.
        var taken = Assert.Single((await mill.SwapsAsync())[0].PartsTaken);
        Assert.Equal(("Chain", "16B-1", 160 - await StockAsync(mill)), (taken.Kind, taken.Designation, taken.Quantity));
        Assert.InRange(taken.Quantity, 79, 81);
        Assert.Equal(2, await EventsAsync(mill, swap.ChainId));

        Assert.Null(await desk.UndoAsync(swap.Id, "fitter", Ct));
        Assert.Equal(160, await StockAsync(mill));
        Assert.Equal(0, await EventsAsync(mill, swap.ChainId));
        Assert.Equal(SwapEnd.Planned, (await mill.SwapsAsync())[0].Outcome);
        Assert.NotNull(await desk.UndoAsync(swap.Id, "fitter", Ct));

        await desk.DoneAsync(swap.Id, told with { FromStock = false }, "fitter", Ct);
        Assert.Equal((160, 2), (await StockAsync(mill), await EventsAsync(mill, swap.ChainId)));
    }

    [Fact]
    public async Task A_report_cannot_be_taken_back_once_the_next_swap_is_planned_and_the_revision_only_grows()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.KeepAsync(await mill.ProposedAsync());
        var (desk, swap) = (mill.Get<AfterStopDesk>(), (await mill.SwapsAsync())[0]);
        var told = new SwapDone(mill.Now, null, "", Broke: false, TakeUpMm: null, "");
        var revisions = new List<int> { (await mill.DraftAsync()).Picture.Revision };
        await desk.DoneAsync(swap.Id, told, "fitter", Ct);
        revisions.Add((await mill.DraftAsync()).Picture.Revision);
        await desk.UndoAsync(swap.Id, "fitter", Ct);
        revisions.Add((await mill.DraftAsync()).Picture.Revision);
        await desk.DoneAsync(swap.Id, told, "fitter", Ct);
        revisions.Add((await mill.DraftAsync()).Picture.Revision);
        Assert.Equal(revisions.Distinct().Order(), revisions);

        await using (var db = mill.Db())
        {
            db.Swaps.Add(new SwapRow { ChainId = swap.ChainId, WindowId = "x", Start = mill.Now.AddDays(90) });
            await db.SaveChangesAsync(Ct);
        }

        Assert.Contains(
            "planned already", (await desk.UndoAsync(swap.Id, "fitter", Ct))?.ToString(), StringComparison.Ordinal);
        Assert.Equal(swap.Id, Assert.Single(await desk.ReportedAsync(Ct)).Swap.Id);
    }

    private static async Task<int> StockAsync(PlannedMill mill)
    {
        await using var db = mill.Db();
        return (await db.Spares.SingleAsync(Ct)).InStock;
    }

    private static async Task<int> EventsAsync(PlannedMill mill, int chainId)
    {
        await using var db = mill.Db();
        return (await db.StandingEventsAsync(chainId, Ct)).Count;
    }
}
