using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Signals;
using WearWatch.Plant.Telemetry;
using WearWatch.SensorSim.Passes;
using WearWatch.Signals.Passes;
using WearWatch.Storage.Rows;
using WearWatch.Worker.Tests.Telemetry;

namespace WearWatch.Worker.Tests.Signals;

/// <summary>A day of sensor passes becomes a reading.</summary>
public sealed class PassDayTests
{
    private static readonly DateTimeOffset Midnight = new(2026, 6, 1, 0, 0, 0, TimeSpan.Zero);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_day_of_passes_becomes_one_reading_when_it_is_over_and_a_moved_sensor_none()
    {
        const double distanceMm = 40.37 * 25.4;
        await using var plant = await TestPlant.OpenAsync();
        var chain = await plant.AddChainAsync();
        await using var db = plant.Db();
        db.SensorPairs.Add(new SensorPairRow
        {
            ChainId = chain,
            From = Midnight.AddDays(-1),
            DistanceMm = distanceMm,
            DistanceUncertaintyMm = 0.05,
            DriverTeeth = 17,
        });
        await db.SaveChangesAsync(Ct);
        var rig = new PassRig(new RigSetup(25.4, 120, 17, distanceMm, 1.0), 1.1, 5);
        await PassDayAsync(plant, rig, Midnight, default);
        await ConcludeAsync(plant);
        Assert.Empty(await db.PassDays.ToListAsync(Ct)); // the day is not over

        plant.Clock.Advance(TimeSpan.FromDays(1));
        await ConcludeAsync(plant);
        Assert.Empty(await db.PassDays.ToListAsync(Ct)); // more of it may be on its way
        plant.Clock.Advance(TimeSpan.FromHours(1));
        await ConcludeAsync(plant);
        await ConcludeAsync(plant);
        var reading = await db.Readings.SingleAsync(Ct);
        var elongation = Assert.IsType<GaugeOutcome.Measured>(
            Gauge.Measure(25.4, reading.Pitches, reading.LengthMm, reading.Tool, reading.TemperatureC,
                reading.LengthUncertaintyMm)).Elongation;
        // Oracle: the simulator's truth; three standard uncertainties of the day.
        Assert.Equal(rig.TrueElongationPercent, elongation.Percent, 3 * elongation.ScatterPercent);
        Assert.InRange(elongation.ScatterPercent, 0.003, 0.012);
        Assert.NotNull((await LatestAsync(plant)).ElongationPct);

        await PassDayAsync(plant, rig, Midnight.AddDays(1), new RigFault(MovedByMm: 4));
        plant.Clock.Advance(TimeSpan.FromDays(1));
        // The next day has begun: nothing more of this one is to come.
        await PassDayAsync(plant, rig, Midnight.AddDays(2), new RigFault(MovedByMm: 4), bursts: 1);
        await ConcludeAsync(plant);
        Assert.Equal(1, await db.Readings.CountAsync(Ct));
        Assert.Equal([null, PassDoubt.SensorMoved], await db.PassDays.OrderBy(p => p.Day).Select(p => p.Doubt).ToListAsync(Ct));
    }

    // A fast chain, whose joints differ by less than the sensors' jitter: the pattern does not tell the whole pitches. What a
    // fresh chain may be does: one pitch of 40 is 2.5 % of elongation.
    [Fact]
    public async Task A_fast_chain_never_measured_is_counted_when_its_replacement_is_recorded_and_else_a_tape_is_asked_for()
    {
        const double distanceMm = 40.1 * 25.4;
        await using var plant = await TestPlant.OpenAsync();
        int[] chains = [await plant.AddChainAsync(), await plant.AddChainAsync("C2")];
        await using var db = plant.Db();
        db.SensorPairs.AddRange(chains.Select(c => new SensorPairRow
        {
            ChainId = c,
            From = Midnight.AddDays(-1),
            DistanceMm = distanceMm,
            DistanceUncertaintyMm = 0.05,
            DriverTeeth = 19,
        }));
        await db.SaveChangesAsync(Ct);
        await plant.Desk.TakeEventAsync(A.Event("C2", ChainEventKind.Replacement, at: Midnight.AddHours(-1)), Ct);
        var rig = new PassRig(new RigSetup(25.4, 120, 19, distanceMm, 9.0), 0.2, 5);
        await PassDayAsync(plant, rig, Midnight, default, bursts: 10);
        await PassDayAsync(plant, rig, Midnight, default, "C2", bursts: 10);
        plant.Clock.Advance(TimeSpan.FromDays(1));
        await ConcludeAsync(plant);
        plant.Clock.Advance(TimeSpan.FromHours(1));
        await ConcludeAsync(plant);
        var days = await db.PassDays.AsNoTracking().ToDictionaryAsync(p => p.ChainId, Ct);
        Assert.Equal(PassDoubt.WrongCount, days[chains[0]].Doubt);
        Assert.Null(days[chains[1]].Doubt);
        Assert.Equal(rig.TrueElongationPercent, days[chains[1]].ElongationPct!.Value, 3 * days[chains[1]].UncertaintyPct!.Value);
        Assert.Equal(chains[1], (await db.Readings.SingleAsync(Ct)).ChainId);
    }

    private static async Task PassDayAsync(
        TestPlant plant, PassRig rig, DateTimeOffset day, RigFault fault, string chain = "C1", int bursts = 40)
    {
        for (var i = 0; i < bursts; i++)
        {
            var (first, second) = rig.Run(5, 25, 20, fault);
            var times = $"\"first_us\":[{string.Join(',', first)}],\"second_us\":[{string.Join(',', second)}]";
            await TakeAsync(plant, Sent.Of("passes", times + ",\"temperature_c\":25", chain, day.AddMinutes(15 * i)));
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
