using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Intake;
using WearWatch.Storage;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>
/// Hour counters that cannot be: they wait with the question, move nothing, and move the chain once they are answered.
/// </summary>
public sealed class CounterInDoubtTests
{
    private static readonly DateTimeOffset First = TestPlant.Start.AddDays(-200);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(133_000, "13,300 h")] // one digit too many
    [InlineData(31_300, "13,300 h")] // two swapped
    public async Task A_counter_that_cannot_be_waits_and_moves_nothing_until_it_is_corrected(double told, string offered)
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await FollowedAsync(plant);
        var before = await EarlyAsync(plant, id);
        var waiting = Assert.IsType<IntakeAnswer.Waiting>(await plant.Desk.TakeReadingAsync(Read(110, told), Ct));

        Assert.Contains(offered, waiting.Why.ToString(), StringComparison.Ordinal);
        Assert.Equal(before, await EarlyAsync(plant, id));

        Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.CorrectAsync(waiting.Id, Read(110, 13_300), Ct));
        Assert.NotEqual(before, await EarlyAsync(plant, id));
        await using var db = plant.Db();
        Assert.Equal(13_300, (await db.StandingReadingsAsync(id, Ct))[^1].CounterH);
    }

    [Fact]
    public async Task A_persons_yes_takes_it_as_it_is()
    {
        await using var plant = await TestPlant.OpenAsync();
        await FollowedAsync(plant);
        Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(Read(110, 31_300) with { Confirmed = true }, Ct));
    }

    [Fact]
    public async Task A_row_of_a_file_with_such_a_counter_waits_and_the_rows_after_it_go_on()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await FollowedAsync(plant);
        var report = await plant.Import.ImportAsync([A.Readings(Row(110, 133_000), Row(120, 13_460), Row(130, 13_600))], ct: Ct);

        Assert.Equal((2, 1, 0), (report.Taken, report.Waiting, report.Refused));
        Assert.Contains("13,300 h", Assert.Single(report.Files[0].Remarks).Reason.ToString(), StringComparison.Ordinal);
        await using var db = plant.Db();
        Assert.Equal(13_600, (await db.StandingReadingsAsync(id, Ct))[^1].CounterH);
    }

    [Fact]
    public async Task A_counter_set_back_without_record_is_said_once_and_the_events_after_it_are_weighed_from_there()
    {
        await using var plant = await TestPlant.OpenAsync();
        await FollowedAsync(plant);
        var report = await plant.Import.ImportAsync(
            [A.Events(Event("oiling", 110, 40), Event("oiling", 115, 110), Event("oiling", 120, 180))], ct: Ct);

        Assert.Equal((3, 0), (report.Taken, report.Refused));
        Assert.Contains("set back without record", Assert.Single(report.Files[0].Remarks).Reason.ToString(),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_event_whose_counter_cannot_be_is_sent_back_with_what_was_meant()
    {
        await using var plant = await TestPlant.OpenAsync();
        await FollowedAsync(plant);
        var refused = Assert.IsType<IntakeAnswer.Refused>(await plant.Desk.TakeEventAsync(
            A.Event(kind: ChainEventKind.Replacement, beforeH: 133_000, afterH: 133_000, at: First.AddDays(110)), Ct));

        Assert.Equal("counter_h_before", Assert.Single(refused.Refusals).Field);
        Assert.Contains("13,300 h", refused.Refusals[0].Reason.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ChainEventKind.Oiling)]
    [InlineData(ChainEventKind.Tensioned)]
    [InlineData(ChainEventKind.MeterReset)]
    public async Task The_counter_of_any_event_is_weighed_by_the_hours_that_have_passed(ChainEventKind kind)
    {
        await using var plant = await TestPlant.OpenAsync();
        await FollowedAsync(plant);
        var wrong = await plant.Desk.TakeEventAsync(A.Event(kind: kind, beforeH: 31_300, at: First.AddDays(110)), Ct);
        var right = await plant.Desk.TakeEventAsync(A.Event(kind: kind, beforeH: 13_300, at: First.AddDays(110)), Ct);

        Assert.Contains("13,300 h", Assert.Single(Assert.IsType<IntakeAnswer.Refused>(wrong).Refusals).Reason.ToString(),
            StringComparison.Ordinal);
        Assert.IsType<IntakeAnswer.Taken>(right);
    }

    [Fact]
    public async Task An_event_of_a_file_with_such_a_counter_is_sent_back_with_what_was_meant_and_the_rest_goes_on()
    {
        await using var plant = await TestPlant.OpenAsync();
        await FollowedAsync(plant);
        var report = await plant.Import.ImportAsync(
            [A.Events(Event("oiling", 110, 31_300), Event("oiling", 111, 13_315), Event("replacement", 112, 133_300))], ct: Ct);

        Assert.Equal((1, 2), (report.Taken, report.Refused));
        Assert.All(report.Files[0].Remarks, r => Assert.Equal("counter_h_before", r.Column));
        Assert.Contains("13,300 h", report.Files[0].Remarks[0].Reason.ToString(), StringComparison.Ordinal);
        Assert.Contains("13,330 h", report.Files[0].Remarks[1].Reason.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_counter_of_the_neighbour_in_a_row_of_a_file_is_named()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync("C1", "line=Drying");
        await plant.AddChainAsync("C2", "line=Drying");
        for (var i = 0; i <= 10; i++)
        {
            await plant.Desk.TakeReadingAsync(Read(10 * i), Ct);
            await plant.Desk.TakeReadingAsync(
                Read(10 * i, CounterAt(10 * i) + 40_000) with { Chain = "C2", Confirmed = true }, Ct);
        }

        var report = await plant.Import.ImportAsync([A.Readings(Row(110, CounterAt(110) + 40_000))], ct: Ct);

        Assert.Contains("the counter of C2", Assert.Single(report.Files[0].Remarks).Reason.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_tenfold_temperature_is_asked_about()
    {
        await using var plant = await TestPlant.OpenAsync();
        await FollowedAsync(plant);
        await plant.Desk.TakeReadingAsync(Read(110) with { TemperatureC = 31 }, Ct);
        var waiting = await plant.Desk.TakeReadingAsync(Read(120) with { TemperatureC = 310 }, Ct);

        Assert.Contains("about 31 °C is usual", Assert.IsType<IntakeAnswer.Waiting>(waiting).Why.ToString(),
            StringComparison.Ordinal);
        Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(Read(120) with { TemperatureC = 33 }, Ct));
    }

    [Fact]
    public async Task A_counter_of_before_the_replacement_told_after_it_is_asked_about()
    {
        await using var plant = await TestPlant.OpenAsync();
        await FollowedAsync(plant);
        var replaced = A.Event(kind: ChainEventKind.Replacement, beforeH: 13_300, afterH: 13_300, at: First.AddDays(110));
        Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeEventAsync(replaced with { Confirmed = true }, Ct));
        var waiting = await plant.Desk.TakeReadingAsync(Read(111, 13_200), Ct);

        Assert.StartsWith("This counter does not fit", Assert.IsType<IntakeAnswer.Waiting>(waiting).Why.ToString(),
            StringComparison.Ordinal);
    }

    private static string Event(string kind, int day, double counterH) => FormattableString.Invariant(
        $"C1,{kind},{First.AddDays(day):yyyy-MM-ddTHH:mm:ssZ},{counterH},{(kind == "replacement" ? counterH : "")}");

    private static async Task<int> FollowedAsync(TestPlant plant)
    {
        var id = await plant.AddChainAsync();
        for (var i = 0; i <= 10; i++) Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(Read(10 * i), Ct));
        return id;
    }

    private static async Task<DateTimeOffset?> EarlyAsync(TestPlant plant, int id)
    {
        await using var db = plant.Db();
        return (await db.Forecasts.SingleAsync(f => f.ChainId == id && f.IsLatest, Ct)).EarlyDate;
    }

    // 15 h a day from 11,650 h on; 0.3 % in 1,000 h.
    private static double CounterAt(int day) => 11_650 + 15 * day;

    private static double PercentAt(int day) => 0.4 + 0.3 * 15 * day / 1000;

    private static NewReading Read(int day, double? counterH = null) =>
        A.Reading(counterH: counterH ?? CounterAt(day), percent: PercentAt(day), takenAt: First.AddDays(day));

    private static string Row(int day, double counterH) => FormattableString.Invariant(
        $"C1,{First.AddDays(day):yyyy-MM-ddTHH:mm:ssZ},{counterH},tape,,40,{A.Length(PercentAt(day))},mm,");
}
