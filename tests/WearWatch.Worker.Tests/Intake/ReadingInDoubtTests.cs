using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Intake;
using WearWatch.Storage;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>Readings that wait for a person, and readings that are corrected or withdrawn.</summary>
public sealed class ReadingInDoubtTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_length_that_cannot_be_waits_until_a_person_says_yes()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        var waiting = Assert.IsType<IntakeAnswer.Waiting>(await plant.Desk.TakeReadingAsync(A.Reading(percent: 12), Ct));
        await using var db = plant.Db();
        Assert.Empty(await db.StandingReadingsAsync(id, Ct));
        var yes = Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.ConfirmAsync(waiting.Id, "K. Sommer", isPlanner: true, Ct));
        var row = Assert.Single(await db.StandingReadingsAsync(id, Ct));
        Assert.Equal((yes.Id, waiting.Id, "K. Sommer"), (row.Id, row.CorrectsId, row.ToldBy));
        Assert.Equal(
            new IntakeAnswer.Taken(yes.Id, AlreadyKnown: true),
            await plant.Desk.ConfirmAsync(waiting.Id, "K. Sommer", isPlanner: true, Ct));
    }

    // 42 pitches told as 40 read 5 % longer, which a chain could have: only its track knows better.
    [Fact]
    public async Task A_miscounted_length_that_could_be_is_asked_about_with_the_likeliest_slip()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        for (var i = 1; i <= 5; i++) await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500 * i, percent: 0.2 + 0.1 * i), Ct);
        var miscounted = A.Reading(counterH: 3000, length: FormattableString.Invariant($"{42 * 25.4 * 1.008:0.0}"));
        var waiting = Assert.IsType<IntakeAnswer.Waiting>(await plant.Desk.TakeReadingAsync(miscounted, Ct));
        Assert.Contains("42 pitches", waiting.Why.ToString(), StringComparison.Ordinal);
        await using var db = plant.Db();
        Assert.Equal(5, (await db.StandingReadingsAsync(id, Ct)).Count);
    }

    [Fact]
    public async Task A_length_that_cannot_be_is_taken_when_a_planners_yes_comes_with_it()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var told = A.Reading(percent: 12, confirmed: true);
        Assert.IsType<IntakeAnswer.Waiting>(await plant.Desk.TakeReadingAsync(told with { Key = "of a technician" }, Ct));
        Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(told with { ByPlanner = true }, Ct));
    }

    [Fact]
    public async Task A_waiting_reading_sent_again_waits_still_and_is_taken_once_it_was_accepted()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var reading = A.Reading(percent: 12, key: "phone 1");
        var waiting = Assert.IsType<IntakeAnswer.Waiting>(await plant.Desk.TakeReadingAsync(reading, Ct));
        Assert.Equal(waiting, await plant.Desk.TakeReadingAsync(reading, Ct));
        await plant.Desk.ConfirmAsync(waiting.Id, "K. Sommer", isPlanner: true, Ct);
        Assert.True(Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(reading, Ct)).AlreadyKnown);
    }

    [Fact]
    public async Task A_waiting_reading_raises_a_notice_that_ends_with_the_answer()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        var waiting = Assert.IsType<IntakeAnswer.Waiting>(await plant.Desk.TakeReadingAsync(A.Reading(percent: 12), Ct));
        await using var db = plant.Db();
        Assert.Equal(1, await db.Notices
            .CountAsync(n => n.ChainId == id && n.EndedAt == null && n.Kind == Wear.NoticeKind.ReadingHeldBack, Ct));
        await plant.Desk.WithdrawAsync(waiting.Id, "K. Sommer", "slip of the pen", Ct);
        Assert.Equal(0, await db.Notices
            .CountAsync(n => n.ChainId == id && n.EndedAt == null && n.Kind == Wear.NoticeKind.ReadingHeldBack, Ct));
    }

    [Fact]
    public async Task A_counter_that_fell_is_asked_about_and_a_recorded_reset_answers()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 1000), Ct);
        Assert.IsType<IntakeAnswer.Waiting>(await plant.Desk.TakeReadingAsync(A.Reading(counterH: 20, percent: 0.6), Ct));
        await plant.Desk.TakeEventAsync(A.Event(kind: ChainEventKind.MeterReset, beforeH: 1010, afterH: 0), Ct);
        Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(A.Reading(counterH: 30, percent: 0.6), Ct));
    }

    [Fact]
    public async Task A_correction_stands_in_place_of_what_it_corrects_which_is_kept()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        var wrong = Assert.IsType<IntakeAnswer.Taken>(
            await plant.Desk.TakeReadingAsync(A.Reading(counterH: 100, percent: 5), Ct));
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 200, percent: 0.6), Ct);
        var right = Assert.IsType<IntakeAnswer.Taken>(
            await plant.Desk.CorrectAsync(wrong.Id, A.Reading(counterH: 100, percent: 0.5), Ct));
        var again = Assert.IsType<IntakeAnswer.Taken>(
            await plant.Desk.CorrectAsync(wrong.Id, A.Reading(counterH: 100, percent: 0.4), Ct));
        await using var db = plant.Db();
        Assert.Equal([again.Id, wrong.Id + 1], (await db.StandingReadingsAsync(id, Ct)).Select(r => r.Id));
        Assert.Equal(right.Id, (await db.Readings.SingleAsync(r => r.Id == again.Id, Ct)).CorrectsId);
        Assert.Equal(4, await db.Readings.CountAsync(Ct));
    }

    [Fact]
    public async Task A_withdrawn_reading_counts_no_more_and_its_reason_is_kept()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        var taken = Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(A.Reading(), Ct));
        Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.WithdrawAsync(taken.Id, "K. Sommer", "wrong chain", Ct));
        await using var db = plant.Db();
        Assert.Empty(await db.StandingReadingsAsync(id, Ct));
        Assert.Equal("wrong chain", (await db.Readings.SingleAsync(r => r.Withdraws, Ct)).Note);
        Assert.Equal(0, (await db.Forecasts.SingleAsync(f => f.ChainId == id && f.IsLatest, Ct)).ReadingsUsed);
    }

    [Fact]
    public async Task A_reading_that_is_not_there_can_be_neither_confirmed_nor_corrected()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        Assert.Equal("reading", Field(await plant.Desk.ConfirmAsync(99, "K. Sommer", isPlanner: true, Ct)));
        Assert.Equal("reading", Field(await plant.Desk.CorrectAsync(99, A.Reading(), Ct)));
    }

    private static string Field(IntakeAnswer answer) => Assert.Single(Assert.IsType<IntakeAnswer.Refused>(answer).Refusals).Field;
}
