using System.Globalization;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Signals;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Signals;

/// <summary>
/// Makes readings of lengths that sensors have measured by themselves, and an oiling of each day on which a lubricator stroked:
/// with oil, or dry (0 ml) where nothing arrived, so that a blocked or empty one is noticed.
/// </summary>
public sealed class SingleConclusions(IDbContextFactory<WearDb> database, IntakeDesk desk)
{
    /// <summary>Concludes these hours.</summary>
    public async Task ConcludeAsync(
        int chainId, IReadOnlyList<TelemetryHourRow> hours, TimeZoneInfo zone, CancellationToken ct = default)
    {
        if (hours.Count == 0) return;
        await using var db = await database.CreateDbContextAsync(ct);
        var chain = (await db.Chains.AsNoTracking().SingleAsync(c => c.Id == chainId, ct)).ToCard();
        foreach (var hour in hours.OrderBy(h => h.Hour))
        {
            var end = hour.Hour.AddHours(1);
            var messages = await db.Telemetry.AsNoTracking()
                .Where(t => t.ChainId == chainId && t.Kind == hour.Kind && t.At >= hour.Hour && t.At < end)
                .OrderBy(t => t.At).ToListAsync(ct);
            if (hour.Kind == TelemetryKind.Length)
                foreach (var message in messages) await desk.TakeReadingAsync(Reading(chain.Name, message), ct);
            else
                await TakeStrokesAsync(db, chainId, chain, messages, zone, ct);
        }
    }

    private async Task TakeStrokesAsync(
        WearDb db, int chainId, ChainCard chain, IReadOnlyList<TelemetryRow> strokes, TimeZoneInfo zone, CancellationToken ct)
    {
        foreach (var day in strokes.GroupBy(m => PlantDay.Of(m.At, zone)))
        {
            var told = await db.Events.AsNoTracking()
                .Where(e => e.ChainId == chainId && e.Kind == ChainEventKind.Oiling && e.At >= day.Key.Start && e.At < day.Key.End
                    && e.ToldBy == Lubricator)
                .Select(e => e.OilAmountMl).ToListAsync(ct);
            if (told.Exists(ml => ml is not 0)) continue; // the day has its oiling
            if (day.FirstOrDefault(m => m.Value > 0) is { } oil)
                await desk.TakeEventAsync(Oiling("oiling", chain, oil, day.Key, null), ct);
            else if (told.Count == 0)
                await desk.TakeEventAsync(Oiling("dry", chain, day.First(), day.Key, 0), ct);
        }
    }

    private const string Lubricator = "lubricator";

    // How much a day's strokes gave is known when the day is over: the strokes themselves are added up for the oil used.
    private static NewEvent Oiling(string word, ChainCard chain, TelemetryRow stroke, PlantDay day, double? ml) => new()
    {
        Key = string.Create(CultureInfo.InvariantCulture, $"{word}:{chain.Name}:{day.Start:yyyyMMddHH}"),
        KeyOwner = KeyOwner.Program,
        Told = new ChainEvent
        {
            Chain = chain.Name,
            Kind = ChainEventKind.Oiling,
            At = stroke.At,
            Oil = new OilApplied(OilMethod.Lubricator, chain.OilGrade, ml),
        },
        ToldBy = Lubricator,
    };

    private static NewReading Reading(string chain, TelemetryRow message)
    {
        using var json = JsonDocument.Parse(message.Payload!);
        return new NewReading
        {
            Key = $"telemetry:{message.MessageId}",
            KeyOwner = KeyOwner.Program,
            Chain = chain,
            TakenAt = message.At,
            Tool = Tool.Sensor,
            Pitches = json.RootElement.GetProperty("pitches").GetInt32(),
            Length = message.Value.ToString("0.######", CultureInfo.InvariantCulture),
            TemperatureC = Number("temperature_c"),
            LengthUncertaintyMm = Number("uncertainty_mm"),
            ToldBy = "sensor",
        };

        double? Number(string field) =>
            json.RootElement.TryGetProperty(field, out var value) && value.ValueKind == JsonValueKind.Number
                ? value.GetDouble()
                : null;
    }
}
