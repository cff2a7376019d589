using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Oiling;
using WearWatch.Plant.Signals;
using WearWatch.Plant.Telemetry;
using WearWatch.Storage.Rows;
using WearWatch.Wear;
using WearWatch.Worker.Tests.Telemetry;

namespace WearWatch.Worker.Tests.Signals;

public sealed class SignalDeskTests
{
    private static readonly DateTimeOffset Midnight = new(2026, 6, 1, 0, 0, 0, TimeSpan.Zero);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Hours_by_signals_take_the_place_of_the_calendar_in_the_forecast()
    {
        await using var plant = await TestPlant.OpenAsync();
        var chain = await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 1_000, takenAt: Midnight), Ct);
        plant.Clock.Advance(TimeSpan.FromHours(38)); // two days after the reading: 48 h by a calendar of round the clock
        await plant.Review.ReviewAsync([chain], null, Ct);
        Assert.Equal(48, (await LatestAsync(plant)).HoursNow, 6);

        await TakeAsync(plant, Sent.Of("running", "\"counter_h\":500", at: Midnight),
            Sent.Of("running", "\"counter_h\":510", at: Midnight.AddDays(1)),
            Sent.Of("running", "\"counter_h\":516", at: Midnight.AddDays(2)));
        Assert.Equal([chain], await ConcludeAsync(plant));
        Assert.Equal(16, (await plant.Get<WearWatch.Plant.Tracking.ChainReader>().AssessAsync(chain, Ct))!.HoursNow, 6);
        await using var db = plant.Db();
        Assert.Equal([10.0, 6.0], await db.RunDays.OrderBy(d => d.Day).Select(d => d.Hours).ToListAsync(Ct));
        Assert.Empty(await ConcludeAsync(plant)); // nothing new, nothing to do
    }

    [Fact]
    public async Task A_length_that_sensors_measured_becomes_a_reading_once_with_its_own_uncertainty()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var message = Sent.Of("length", "\"pitches\":40,\"length_mm\":1021.3,\"temperature_c\":31,\"uncertainty_mm\":0.08");
        for (var i = 0; i < 2; i++)
        {
            await TakeAsync(plant, message);
            await ConcludeAsync(plant);
        }

        await using var db = plant.Db();
        var reading = await db.Readings.SingleAsync(Ct);
        Assert.Equal((Tool.Sensor, 40, 1021.3, 31.0, 0.08),
            (reading.Tool, reading.Pitches, reading.LengthMm, reading.TemperatureC, reading.LengthUncertaintyMm));
        Assert.NotNull((await LatestAsync(plant)).ElongationPct);
    }

    [Fact]
    public async Task A_chain_whose_messages_cannot_be_concluded_keeps_no_other_waiting_and_loses_nothing()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await plant.AddChainAsync("C2");
        await TakeAsync(plant, Sent.Of("length", "\"pitches\":40,\"length_mm\":1021.3"),
            Sent.Of("length", "\"pitches\":40,\"length_mm\":1022.4", chain: "C2"));
        await using var db = plant.Db();
        var first = await db.Telemetry.OrderBy(t => t.Id).FirstAsync(Ct);
        await db.Telemetry.Where(t => t.Id == first.Id).ExecuteUpdateAsync(set => set.SetProperty(t => t.Payload, "{}"), Ct);
        await Assert.ThrowsAsync<AggregateException>(() => ConcludeAsync(plant));
        Assert.Equal(1022.4, Assert.Single(await db.Readings.ToListAsync(Ct)).LengthMm);

        await db.Telemetry.Where(t => t.Id == first.Id)
            .ExecuteUpdateAsync(set => set.SetProperty(t => t.Payload, first.Payload), Ct);
        await ConcludeAsync(plant);
        Assert.Equal([1021.3, 1022.4], await db.Readings.Select(r => r.LengthMm).Order().ToListAsync(Ct));
    }

    [Fact]
    public async Task A_lubricator_that_gives_oil_makes_one_oiling_a_day_and_a_blocked_one_oils_nothing()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync("C1", "oil_grade=ISO_VG_100");
        await plant.AddChainAsync("C2");
        for (var i = 0; i < 6; i++)
        {
            await TakeAsync(plant, Sent.Of("oiling", "\"amount_cm3\":0.4", at: Midnight.AddHours(i)),
                Sent.Of("oiling", "\"amount_cm3\":0", "C2", Midnight.AddHours(i)));
            await ConcludeAsync(plant);
        }

        await using var db = plant.Db();
        var told = (await db.Events.OrderBy(e => e.ChainId).ToListAsync(Ct)).ConvertAll(e => e.ToEvent(""));
        Assert.Equal(2, told.Count);
        Assert.Equal((ChainEventKind.Oiling, Midnight, true), (told[0].Kind, told[0].At!.Value, told[0].BroughtOil));
        Assert.Equal(new OilApplied(OilMethod.Lubricator, "ISO_VG_100"), told[0].Oil);
        Assert.Equal(new OilApplied(OilMethod.Lubricator, "", 0), told[1].Oil);
        Assert.False(told[1].BroughtOil);
        // Oracle: arithmetic, 6 strokes of 0.4 cm3; no stroke of C2 brought anything.
        Assert.Equal([new OilUsed(new DateOnly(2026, 6, 1), "ISO_VG_100", 1, 2.4, 0)],
            (await plant.Get<OilConsumption>().AskAsync(Ct)).Select(u => u with { Millilitres = Math.Round(u.Millilitres, 9) }));
    }

    [Theory]
    [InlineData(0.0, "the line is blocked, or it is empty")]
    [InlineData(null, "No pulse comes")]
    public async Task A_lubricator_whose_strokes_end_or_bring_nothing_is_noticed_and_oil_ends_the_notice(
        double? later, string why)
    {
        await using var plant = await TestPlant.OpenAsync();
        var chain = await plant.AddChainAsync("C1", "lubrication=auto");
        async Task DayAsync(int day, double? amount)
        {
            if (amount is { } cm3) await TakeAsync(plant,
                Sent.Of("oiling", FormattableString.Invariant($"\"amount_cm3\":{cm3}"), at: Midnight.AddDays(day).AddHours(8)));
            await ConcludeAsync(plant);
            await plant.Review.ReviewAsync([chain], null, Ct);
            plant.Clock.Advance(TimeSpan.FromDays(1));
        }

        async Task<List<NoticeRow>> NoticesAsync()
        {
            await using var db = plant.Db();
            return await db.Notices.AsNoTracking().Where(n => n.Kind == NoticeKind.LubricatorSilent && n.EndedAt == null)
                .ToListAsync(Ct);
        }

        for (var day = 0; day < 6; day++) await DayAsync(day, 0.4);
        Assert.Empty(await NoticesAsync());
        for (var day = 6; day < 11; day++) await DayAsync(day, later);
        Assert.Contains(why, Assert.Single(await NoticesAsync()).Why.ToString(), StringComparison.Ordinal);
        await DayAsync(11, 0.4);
        Assert.Empty(await NoticesAsync());
    }

    [Fact]
    public async Task A_counter_that_jumped_asks_for_a_person_until_its_change_is_recorded()
    {
        await using var plant = await TestPlant.OpenAsync();
        var chain = await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 1_000, takenAt: Midnight), Ct);
        plant.Clock.Advance(TimeSpan.FromHours(38));
        await TakeAsync(plant, Sent.Of("running", "\"counter_h\":500", at: Midnight),
            Sent.Of("running", "\"counter_h\":510", at: Midnight.AddHours(12)));
        await ConcludeAsync(plant);
        Assert.Empty(await NoticesAsync());

        await TakeAsync(plant, Sent.Of("running", "\"counter_h\":51000", at: Midnight.AddHours(13)));
        await ConcludeAsync(plant);
        var notice = Assert.Single(await NoticesAsync());
        Assert.Contains("jumped", notice.Why.ToString(), StringComparison.Ordinal);
        Assert.Contains("1 Jun 2026", notice.Why.ToString(), StringComparison.Ordinal);

        await plant.Desk.TakeEventAsync(A.Event("C1", ChainEventKind.MeterReset, 1_012, 51_001, Midnight.AddHours(14)), Ct);
        Assert.Empty(await NoticesAsync());

        async Task<List<NoticeRow>> NoticesAsync()
        {
            await using var db = plant.Db();
            return await db.Notices.AsNoTracking().Where(n => n.Kind == NoticeKind.CounterJumped && n.EndedAt == null)
                .ToListAsync(Ct);
        }
    }

    private static Task<TelemetryTaken> TakeAsync(TestPlant plant, params Arrival[] arrivals) =>
        plant.Get<TelemetryDesk>().TakeAsync(arrivals, Ct);

    private static Task<IReadOnlyCollection<int>> ConcludeAsync(TestPlant plant) => plant.Get<SignalDesk>().RunOnceAsync(Ct);

    private static async Task<ForecastRow> LatestAsync(TestPlant plant)
    {
        await using var db = plant.Db();
        return await db.Forecasts.AsNoTracking().SingleAsync(f => f.IsLatest, Ct);
    }
}
