using System.Globalization;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Signals;
using WearWatch.Signals.Passes;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Signals;

/// <summary>Makes one reading of a plant day of passes, which goes in by the same desk as one by tape.</summary>
public sealed class PassConclusion(IDbContextFactory<WearDb> database, IntakeDesk desk)
{
    /// <summary>Concludes a day that is over. A day that was concluded stays as it is.</summary>
    public async Task ConcludeAsync(int chainId, PlantDay day, CancellationToken ct = default)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        if (await db.PassDays.AnyAsync(p => p.ChainId == chainId && p.Day == day.Start && p.Doubt == null, ct)) return;
        var set = await db.SensorPairs.AsNoTracking().Where(s => s.ChainId == chainId && s.From <= day.Start)
            .OrderByDescending(s => s.From)
            .ThenByDescending(s => s.Id).FirstOrDefaultAsync(ct);
        if (set is null) return; // nobody has measured the sensors in: the messages are kept, and the page says what is missing
        var chain = await db.Chains.AsNoTracking().SingleAsync(c => c.Id == chainId, ct);
        var messages = await db.Telemetry.AsNoTracking()
            .Where(t => t.ChainId == chainId && t.Kind == TelemetryKind.Passes && t.At >= day.Start && t.At < day.End)
            .OrderBy(t => t.At).Select(t => new { t.At, t.Payload }).ToListAsync(ct);
        if (messages.Count == 0) return; // thinned out before anybody measured the sensors in
        var bursts = messages.ConvertAll(m => Burst(m.At, m.Payload!));
        var pair = set.ToPair(chain.PitchMm);
        var before = await PassBackground.BeforeAsync(db, chain, set, day, ct);
        var outcome = PassDay.Against(PassDay.Evaluate(pair, bursts, before.Expected), before.Course, PassBackground.DayOf(day));
        await KeepAsync(db, chainId, day, outcome, bursts[^1].At, ct);
        if (outcome is PassOutcome.Measured { Reading: var reading })
            await desk.TakeReadingAsync(Told(chain.Name, chain.PitchMm, day, reading, bursts[^1].At), ct);
    }

    /// <summary>
    /// The reading as the desk takes it: a length over whole pitches at the chain's mean temperature. Its own days have been held
    /// against each other; what the gauge itself doubts waits for a person like any other length.
    /// </summary>
    private static NewReading Told(string chain, double pitchMm, PlantDay day, PassReading reading, DateTimeOffset at)
    {
        var pitches = (int)Math.Round(reading.Pitches);
        var nominalMm = pitches * pitchMm;
        var lengthMm = nominalMm * (1 + reading.ElongationPercent / 100)
            * (1 + Gauge.SteelExpansionPerKelvin * (reading.TemperatureC - Gauge.ReferenceTemperatureC));
        var uncertaintyMm = Math.Round(nominalMm * reading.StandardUncertaintyPercent / 100, 5);
        return new NewReading
        {
            Key = string.Create(CultureInfo.InvariantCulture, $"passes:{chain}:{day.Start:yyyyMMddHH}"),
            KeyOwner = KeyOwner.Program,
            Chain = chain,
            TakenAt = at,
            Tool = Tool.Sensor,
            Pitches = pitches,
            Length = lengthMm.ToString("0.0000", CultureInfo.InvariantCulture),
            TemperatureC = Math.Round(reading.TemperatureC, 1),
            LengthUncertaintyMm = uncertaintyMm,
            ToldBy = "passes at two sensors",
            Confirmed = Gauge.Measure(pitchMm, pitches, lengthMm, Tool.Sensor, reading.TemperatureC, uncertaintyMm)
                is GaugeOutcome.Measured,
        };
    }

    private static async Task KeepAsync(
        WearDb db, int chainId, PlantDay day, PassOutcome outcome, DateTimeOffset lastAt, CancellationToken ct)
    {
        var (measured, doubted) = (outcome as PassOutcome.Measured, outcome as PassOutcome.NotBelieved);
        await db.PassDays.Where(p => p.ChainId == chainId && p.Day == day.Start).ExecuteDeleteAsync(ct);
        db.PassDays.Add(new PassDayRow
        {
            ChainId = chainId,
            Day = day.Start,
            LastAt = lastAt,
            ElongationPct = measured?.Reading.ElongationPercent,
            UncertaintyPct = measured?.Reading.StandardUncertaintyPercent,
            Pitches = measured?.Reading.Pitches,
            Bursts = measured?.Reading.Bursts ?? 0,
            Doubt = doubted?.Doubt,
            Why = doubted?.Why.ToString() ?? "",
            Passes = outcome.Faults.Passes,
            Missed = outcome.Faults.Missed,
            Doubled = outcome.Faults.Doubled,
            Stops = outcome.Faults.Stops,
            UnusedBursts = outcome.Faults.UnusedBursts,
        });
        await db.SaveChangesAsync(ct);
    }

    private static PassBurst Burst(DateTimeOffset at, string payload)
    {
        using var json = JsonDocument.Parse(payload);
        var root = json.RootElement;
        return new PassBurst(at, Times("first_us"), Times("second_us"),
            root.TryGetProperty("temperature_c", out var celsius) && celsius.ValueKind == JsonValueKind.Number
                ? celsius.GetDouble()
                : null);

        List<long> Times(string name) => [.. root.GetProperty(name).EnumerateArray().Select(t => t.GetInt64())];
    }
}
