using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Planning;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>The fitter's card has lengths, hours and a name: all of it is kept, and taken back together.</summary>
public sealed class SwapLengthsTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Old_and_new_length_are_readings_before_and_after_the_replacement()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var swap = await BegunAsync(mill);
        Assert.IsType<IntakeAnswer.Taken>(await mill.Get<AfterStopDesk>().DoneAsync(swap.Id, Told(mill), "planner", Ct));
        var readings = await ReadingsAsync(mill, swap.ChainId);
        var told = Told(mill).At;
        Assert.Equal([(40, 1042.0, true), (40, 1016.5, false)],
            readings.Select(r => (r.Pitches, r.LengthMm, r.TakenAt < told)));
        var kept = (await mill.SwapsAsync()).Single(s => s.Id == swap.Id);
        Assert.Equal((3.5, "Fitter A", true), (kept.HoursWorked!.Value, kept.DoneBy, kept.PlannedHours > 0));
    }

    [Fact]
    public async Task A_report_of_which_a_length_is_refused_leaves_nothing_and_comes_again_corrected()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var swap = await BegunAsync(mill);
        var wrong = Told(mill) with { NewLength = new MeasuredLength("1016.5", 0) };
        var no = Assert.IsType<IntakeAnswer.Refused>(await mill.Get<AfterStopDesk>().DoneAsync(swap.Id, wrong, "planner", Ct));
        Assert.Contains(no.Refusals, r => r.Field == "pitches");
        Assert.Equal(SwapEnd.Planned, (await mill.SwapsAsync()).Single(s => s.Id == swap.Id).Outcome);
        await using (var db = mill.Db()) Assert.Empty(await db.StandingEventsAsync(swap.ChainId, Ct));
        Assert.Empty(await ReadingsAsync(mill, swap.ChainId));
        Assert.IsType<IntakeAnswer.Taken>(await mill.Get<AfterStopDesk>().DoneAsync(swap.Id, Told(mill), "planner", Ct));
        Assert.Equal(2, (await ReadingsAsync(mill, swap.ChainId)).Count);
    }

    [Fact]
    public async Task Undo_takes_the_lengths_back_with_the_replacement()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var swap = await BegunAsync(mill);
        await mill.Get<AfterStopDesk>().DoneAsync(swap.Id, Told(mill), "planner", Ct);
        Assert.Null(await mill.Get<AfterStopDesk>().UndoAsync(swap.Id, "planner", Ct));
        Assert.Empty(await ReadingsAsync(mill, swap.ChainId));
        var kept = (await mill.SwapsAsync()).Single(s => s.Id == swap.Id);
        Assert.Equal((null, ""), (kept.HoursWorked, kept.DoneBy));
    }

    [Fact]
    public async Task A_length_that_does_not_fit_waits_with_its_question_and_the_swap_is_done()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var swap = await BegunAsync(mill);
        await FollowAsync(mill);
        // 1016.5 with two digits swapped.
        var told = Told(mill) with { CounterH = 3_250, NewLength = new MeasuredLength("1061.5", 40) };
        var waiting = Assert.IsType<IntakeAnswer.Waiting>(
            await mill.Get<AfterStopDesk>().DoneAsync(swap.Id, told, "planner", Ct));
        Assert.Contains("does not fit", waiting.Why.ToString(), StringComparison.Ordinal);
        Assert.Equal(SwapEnd.Done, (await mill.SwapsAsync()).Single(s => s.Id == swap.Id).Outcome);
        await using var db = mill.Db();
        Assert.Equal([(1042.0, ReadingStanding.Accepted), (1061.5, ReadingStanding.Waiting)],
            (await db.Readings.OrderBy(r => r.Id).ToListAsync(Ct)).TakeLast(2).Select(r => (r.LengthMm, r.Standing)));
    }

    [Theory]
    [InlineData(32_500.0)] // a digit too many
    [InlineData(325.0)] // a digit left out
    [InlineData(2_350.0)] // two digits swapped
    public async Task A_counter_that_cannot_be_sends_the_report_back_and_leaves_nothing(double counterH)
    {
        await using var mill = await PlannedMill.OpenAsync();
        var swap = await BegunAsync(mill);
        await FollowAsync(mill);
        var before = await EarlyAsync(mill, swap.ChainId);
        var no = Assert.IsType<IntakeAnswer.Refused>(await mill.Get<AfterStopDesk>().DoneAsync(
            swap.Id, Told(mill) with { CounterH = counterH }, "planner", Ct));
        Assert.Contains("counter", Assert.Single(no.Refusals).Reason.ToString(), StringComparison.Ordinal);
        Assert.Equal(before, await EarlyAsync(mill, swap.ChainId));
        Assert.Equal(5, (await ReadingsAsync(mill, swap.ChainId)).Count);
        Assert.Equal(SwapEnd.Planned, (await mill.SwapsAsync()).Single(s => s.Id == swap.Id).Outcome);
        Assert.IsNotType<IntakeAnswer.Refused>(await mill.Get<AfterStopDesk>().DoneAsync(
            swap.Id, Told(mill) with { CounterH = 3_250 }, "planner", Ct));
    }

    [Fact]
    public async Task A_date_before_the_stop_is_asked_about_and_moves_nothing_before_a_yes()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var swap = await BegunAsync(mill);
        await using (var db = mill.Db())
        {
            var start = mill.Now.AddHours(-3);
            await db.Swaps.Where(s => s.Id == swap.Id).ExecuteUpdateAsync(s => s.SetProperty(w => w.Start, start), Ct);
        }

        var told = Told(mill) with { At = mill.Now.AddMonths(-1) };
        var no = Assert.IsType<IntakeAnswer.Refused>(await mill.Get<AfterStopDesk>().DoneAsync(swap.Id, told, "planner", Ct));
        Assert.Equal(Refusal.ToBeConfirmed, Assert.Single(no.Refusals).Field);
        Assert.Empty(await ReadingsAsync(mill, swap.ChainId));
        Assert.IsType<IntakeAnswer.Taken>(
            await mill.Get<AfterStopDesk>().DoneAsync(swap.Id, told with { Confirmed = true }, "planner", Ct));
    }

    /// <summary>Five readings of the chain, 600 h in 30 days, 2.5 % in the end.</summary>
    private static async Task FollowAsync(PlannedMill mill)
    {
        for (var visit = 0; visit < 5; visit++)
        {
            Assert.IsType<IntakeAnswer.Taken>(await mill.Get<IntakeDesk>().TakeReadingAsync(
                A.Reading("D-1", 600 + 600 * visit, 0.5 + 0.5 * visit, takenAt: mill.Now.AddDays(30 * visit - 132),
                    confirmed: true), Ct));
        }
    }

    private static async Task<double> EarlyAsync(PlannedMill mill, int chainId)
    {
        await using var db = mill.Db();
        return db.Forecasts.Single(f => f.IsLatest && f.ChainId == chainId).PercentilesH[4];
    }

    private static SwapDone Told(PlannedMill mill) => new(mill.Now.AddHours(-1), null, "B-7", Broke: false, TakeUpMm: null, "")
    {
        OldLength = new MeasuredLength("1042.0", 40),
        NewLength = new MeasuredLength("1016.5", 40),
        HoursWorked = 3.5,
        DoneBy = "Fitter A",
    };

    private static async Task<SwapRow> BegunAsync(PlannedMill mill)
    {
        await mill.KeepAsync(await mill.ProposedAsync());
        return (await mill.SwapsAsync())[0];
    }

    private static async Task<List<ReadingRow>> ReadingsAsync(PlannedMill mill, int chainId)
    {
        await using var db = mill.Db();
        return [.. (await db.StandingReadingsAsync(chainId, Ct)).OrderBy(r => r.TakenAt)];
    }
}
