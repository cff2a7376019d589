using System.Globalization;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Signals;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Units;
using WearWatch.Worker.Intake;

namespace WearWatch.Worker.Signals;

/// <summary>Makes readings of lengths that sensors have measured by themselves, and an oiling of each day on which a lubricator gave oil.</summary>
public sealed class SingleConclusions(IDbContextFactory<WearDb> database, IntakeDesk desk)
{
    /// <summary>Concludes these hours.</summary>
    public async Task ConcludeAsync(int chainId, IReadOnlyList<TelemetryHourRow> hours, TimeZoneInfo zone, CancellationToken ct = default)
    {
        if (hours.Count == 0) return;
        await using var db = await database.CreateDbContextAsync(ct);
        var name = await db.Chains.Where(c => c.Id == chainId).Select(c => c.Name).SingleAsync(ct);
        foreach (var hour in hours.OrderBy(h => h.Hour))
        {
            var end = hour.Hour.AddHours(1);
            var messages = await db.Telemetry.AsNoTracking().Where(t => t.ChainId == chainId && t.Kind == hour.Kind && t.At >= hour.Hour && t.At < end)
                .OrderBy(t => t.At).ToListAsync(ct);
            if (hour.Kind == TelemetryKind.Length)
                foreach (var message in messages) await desk.TakeReadingAsync(Reading(name, message), ct);
            else if (messages.Find(m => m.Value > 0) is { } stroke && !await IsOiledAsync(db, chainId, PlantDay.Of(stroke.At, zone), ct))
                await desk.TakeEventAsync(Oiling(name, stroke, PlantDay.Of(stroke.At, zone)), ct);
        }
    }

    private static Task<bool> IsOiledAsync(WearDb db, int chainId, PlantDay day, CancellationToken ct) => db.Events.AnyAsync(
        e => e.ChainId == chainId && e.Kind == ChainEventKind.Oiling && e.At >= day.Start && e.At < day.End && e.ToldBy == Lubricator, ct);

    private const string Lubricator = "lubricator";

    private static NewEvent Oiling(string chain, TelemetryRow stroke, PlantDay day) => new(
        string.Create(CultureInfo.InvariantCulture, $"oiling:{chain}:{day.Start:yyyyMMddHH}"), chain, ChainEventKind.Oiling, stroke.At, null, null, "", Lubricator);

    private static NewReading Reading(string chain, TelemetryRow message)
    {
        using var json = JsonDocument.Parse(message.Payload!);
        return new NewReading(
            $"telemetry:{message.MessageId}", chain, message.At, null, Tool.Sensor, "", json.RootElement.GetProperty("pitches").GetInt32(),
            message.Value.ToString("0.######", CultureInfo.InvariantCulture), LengthUnit.Millimetre, Number("temperature_c"), "sensor",
            LengthUncertaintyMm: Number("uncertainty_mm"));

        double? Number(string field) =>
            json.RootElement.TryGetProperty(field, out var value) && value.ValueKind == JsonValueKind.Number ? value.GetDouble() : null;
    }
}
