using System.Globalization;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Planning;
using WearWatch.Plant.Tracking;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>The limit that comes first dates a chain: in its forecast as in the plan.</summary>
public sealed class FirstLimitTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    // The length grows by 0.05 % a visit of 500 h, sixty of them to 3 %; a conveyor's pin of 20 mm goes to 19.5 by [27].
    [Theory]
    [InlineData("pin_diameter", "pin diameter", 20, 0.1, false)]
    [InlineData("tooth_root", "tooth root, worn depth", 0, -0.6, true)]
    public async Task A_part_that_reaches_its_limit_before_the_length_dates_forecast_and_plan(
        string part, string cause, double fresh, double lessByVisit, bool takesSprockets)
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync(more: "family=conveyor pitches=80 sprocket_teeth=12;12");
        for (var visit = 1; visit <= 4; visit++)
        {
            await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500 * visit, percent: 0.05 * visit, confirmed: true), Ct);
            if (visit == 3) Assert.Null((await ForecastAsync(plant, id)).Sooner); // two visits show no trend
            await TakeAsync(plant, part, visit, fresh - lessByVisit * visit, fresh);
        }

        var row = await ForecastAsync(plant, id);
        Assert.Equal((cause, takesSprockets), (row.Sooner!.Cause.ToString(), row.Sooner.IsOfSprockets));
        Assert.Equal(Condition.PlanASwap, row.Condition);
        var reviewed = (await plant.Get<ChainReader>().ReviewAsync(id, Ct))!;
        var track = Assert.Single(reviewed.Parts.Tracks);
        Assert.Equal(track.Ahead!.Forecast.PercentilesHours, row.First.Forecast.PercentilesHours);
        // One step of the way of five is left, a visit of 500 h: far sooner than the length.
        Assert.InRange(row.First.Forecast.MiddleHours!.Value, 300, 900);
        Assert.True(row.ToForecast().EarlyHours > 5 * row.First.Forecast.MiddleHours);
        Assert.True(row.EarlyDate < row.MiddleDate && row.MiddleDate < row.LateDate);

        var picture = await plant.Get<PlanQuery>().AskAsync(Ct);
        var task = Assert.Single(picture.Input.Tasks);
        Assert.Equal(row.First.Forecast.MiddleHours!.Value - row.First.HoursSince, task.Left.At(0.5), 1.0);
        Assert.Equal((row.EarlyDate, cause), (picture.Faces["C1"].Early, picture.Faces["C1"].LimitedBy.ToString()));
        Assert.Equal(takesSprockets, task.TakesSprockets);
        Assert.Equal(cause, Assert.Single(PlanJson.Of(new PlanDraft(picture)).Swaps).LimitedBy);
    }

    [Fact]
    public async Task A_reading_at_the_limit_leaves_no_hours_and_one_far_from_it_changes_nothing()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync(more: "family=conveyor pitches=80");
        for (var visit = 1; visit <= 3; visit++)
            await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500 * visit, percent: 0.05 * visit, confirmed: true), Ct);
        await TakeAsync(plant, "pin_diameter", 2, 19.95, 20);
        var before = await ForecastAsync(plant, id);
        Assert.True(before.First.IsByLength);
        Assert.Empty((await plant.Get<PlanQuery>().AskAsync(Ct)).Input.Tasks);
        await TakeAsync(plant, "pin_diameter", 3, 19.5, 20);
        var row = await ForecastAsync(plant, id);
        Assert.True(row.EarlyDate <= TestPlant.Start && row.LateDate <= TestPlant.Start);
        Assert.Equal(1, Assert.Single((await plant.Get<PlanQuery>().AskAsync(Ct)).Input.Tasks).Left.ProbabilityPast(1), 9);
    }

    // Chain and sprockets go together, at the next stop: teeth alone stop no line.
    [Fact]
    public async Task Teeth_at_their_limit_ask_for_a_planned_swap_not_for_one_now()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync(more: "family=conveyor pitches=80 sprocket_teeth=12;12");
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500, percent: 0.05, confirmed: true), Ct);
        Assert.Equal(Condition.WithinLimit, (await ForecastAsync(plant, id)).Condition);
        await TakeAsync(plant, "tooth_root", 2, 3.1, 0);
        var row = await ForecastAsync(plant, id);
        Assert.Equal((Condition.SwapNow, Condition.PlanASwap), (row.SprocketCondition, row.Condition));
        Assert.True(row.First.IsOfSprockets && row.EarlyDate <= TestPlant.Start);
    }

    // A slack is set anew, and asks for no new chain.
    [Fact]
    public async Task A_slack_at_its_limit_does_not_date_a_swap()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync(more: "pitches=120 centre_distance_mm=1000");
        for (var visit = 1; visit <= 4; visit++) await TakeAsync(plant, "sag", visit, 16.0 * visit, 0);
        var row = await ForecastAsync(plant, id);
        Assert.True(row.First.IsByLength);
        Assert.NotNull(row.TensionFrom);
    }

    private static async Task<ForecastRow> ForecastAsync(TestPlant plant, int id)
    {
        await using var db = plant.Db();
        return await db.Forecasts.AsNoTracking().SingleAsync(f => f.ChainId == id && f.IsLatest, Ct);
    }

    private static async Task TakeAsync(TestPlant plant, string part, int visit, double mm, double fresh)
    {
        var told = new PartAsWritten
        {
            Chain = "C1",
            CounterH = 500 * visit,
            TakenAt = TestPlant.Start.AddHours(500 * (visit - 4)),
            Part = part,
            Value = mm.ToString("0.00", CultureInfo.InvariantCulture),
            New = fresh > 0 ? fresh.ToString(CultureInfo.InvariantCulture) : "",
        };
        Assert.IsType<IntakeAnswer.Taken>(
            await plant.Get<PartDesk>().TakeAsync(new NewPartReading(told, $"{part}{visit}", "Ina"), Ct));
    }
}
