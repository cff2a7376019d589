using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Plant.Intake;
using WearWatch.Storage;
using WearWatch.Units;

namespace WearWatch.Worker.Tests.Intake;

public sealed class IntakeDeskTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_taken_reading_is_stored_and_the_chain_has_been_assessed_with_it()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        var heard = new List<int>();
        plant.Get<PlantNews>().ChainsChanged += heard.AddRange;
        var taken = Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(A.Reading(percent: 1.2), Ct));
        await using var db = plant.Db();
        var forecast = await db.Forecasts.SingleAsync(f => f.ChainId == id && f.IsLatest, Ct);
        Assert.Equal((taken.Id, 1), (forecast.LastReadingId, forecast.ReadingsUsed));
        Assert.Contains(id, heard);
    }

    [Fact]
    public async Task The_forecast_moves_with_every_reading_and_the_old_ones_are_kept()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        for (var i = 1; i <= 4; i++) await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500 * i, percent: 0.4 * i), Ct);
        await using var db = plant.Db();
        var forecasts = await db.Forecasts.Where(f => f.ChainId == id).OrderBy(f => f.Id).ToListAsync(Ct);
        Assert.Equal(5, forecasts.Select(f => f.PercentilesH[49]).Distinct().Count()); // one before the first reading
        Assert.True(forecasts[^1].IsLatest);
        Assert.Single(forecasts, f => f.IsLatest);
    }

    [Fact]
    public async Task The_same_key_twice_changes_nothing()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var reading = A.Reading(key: "phone 1");
        var first = Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeReadingAsync(reading, Ct));
        Assert.Equal(new IntakeAnswer.Taken(first.Id, AlreadyKnown: true), await plant.Desk.TakeReadingAsync(reading, Ct));
        await using var db = plant.Db();
        Assert.Equal(1, await db.Readings.CountAsync(Ct));
    }

    [Fact]
    public async Task The_same_key_with_another_reading_is_refused()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(key: "phone 1"), Ct);
        Assert.Equal("key", Field(await plant.Desk.TakeReadingAsync(A.Reading(key: "phone 1", percent: 0.9), Ct)));
    }

    [Fact]
    public async Task Twenty_senders_of_one_reading_store_it_once()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var reading = A.Reading(key: "phone 1");
        var answers =
            await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => Task.Run(() => plant.Desk.TakeReadingAsync(reading, Ct))));
        Assert.Single(answers.Cast<IntakeAnswer.Taken>(), a => !a.AlreadyKnown);
        Assert.Single(answers.Cast<IntakeAnswer.Taken>().Select(a => a.Id).Distinct());
    }

    [Theory]
    [InlineData("nobody", 100.0, 40, "1020", "chain")]
    [InlineData("C1", null, 40, "1020", "counter_h")]
    [InlineData("C1", -1.0, 40, "1020", "counter_h")]
    [InlineData("C1", double.NaN, 40, "1020", "counter_h")]
    [InlineData("C1", 100.0, 0, "1020", "pitches")]
    [InlineData("C1", 100.0, -2, "1020", "pitches")]
    [InlineData("C1", 100.0, 40, "long", "length")]
    [InlineData("C1", 100.0, 40, "", "length")]
    public async Task What_cannot_be_read_is_refused_with_its_field_and_not_stored(
        string chain, double? counterH, int pitches, string length, string field)
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        Assert.Equal(
            field, Field(await plant.Desk.TakeReadingAsync(A.Reading(chain, counterH, length: length, pitches: pitches), Ct)));
        await using var db = plant.Db();
        Assert.Empty(await db.Readings.ToListAsync(Ct));
    }

    [Fact]
    public async Task A_length_in_inches_with_a_fraction_is_taken_as_typed()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(length: "40 3/16", unit: LengthUnit.Inch), Ct);
        await using var db = plant.Db();
        var row = await db.Readings.SingleAsync(Ct);
        Assert.Equal((1020.7625, "40 3/16 in"), (row.LengthMm, row.LengthAsTold)); // 40.1875 in of 25.4 mm, by definition
    }

    [Fact]
    public async Task An_event_is_stored_once_and_taken_into_account()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 1000, percent: 2), Ct);
        var replaced = A.Event(kind: ChainEventKind.Replacement, beforeH: 1100, afterH: 1100, key: "swap 1");
        var first = Assert.IsType<IntakeAnswer.Taken>(await plant.Desk.TakeEventAsync(replaced, Ct));
        Assert.Equal(new IntakeAnswer.Taken(first.Id, AlreadyKnown: true), await plant.Desk.TakeEventAsync(replaced, Ct));
        await using var db = plant.Db();
        var forecast = await db.Forecasts.SingleAsync(f => f.ChainId == id && f.IsLatest, Ct);
        Assert.Equal((0, 1), (forecast.ReadingsUsed, forecast.Life));
    }

    [Fact]
    public async Task An_event_without_time_and_counter_is_refused()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        Assert.Equal("taken_at", Field(await plant.Desk.TakeEventAsync(A.Event(), Ct)));
        Assert.Equal("taken_at", Field(await plant.Desk.TakeEventAsync(A.Event(at: TestPlant.Start.AddDays(9)), Ct)));
        Assert.Equal("chain", Field(await plant.Desk.TakeEventAsync(A.Event("nobody", beforeH: 1), Ct)));
    }

    private static string Field(IntakeAnswer answer) => Assert.Single(Assert.IsType<IntakeAnswer.Refused>(answer).Refusals).Field;
}
