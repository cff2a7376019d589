using System.Text.Json;
using System.Text.Json.Serialization;
using WearWatch.Running;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Settings;

/// <summary>A plant's weekly shifts and holidays, to and from the text in which they are kept.</summary>
public static partial class ShiftPlan
{
    /// <summary>The production calendar that a plant's settings describe.</summary>
    public static ProductionCalendar Calendar(PlantRow plant) => new(
        Shifts(plant.Shifts), plant.Utilisation, TimeZoneInfo.FindSystemTimeZoneById(plant.TimeZone), Holidays(plant.Holidays));

    /// <summary>The weekly shifts in a text such as <c>[{"day":"Monday","start":"06:00","hours":16}]</c>.</summary>
    public static IReadOnlyList<Shift> Shifts(string text) =>
        [.. (JsonSerializer.Deserialize(text, Json.Default.ShiftJsonArray) ?? [])
            .Select(s => new Shift(s.Day, s.Start, TimeSpan.FromHours(s.Hours)))];

    /// <summary>The text of weekly shifts.</summary>
    public static string Text(IEnumerable<Shift> shifts) =>
        JsonSerializer.Serialize(
            [.. shifts.Select(s => new ShiftJson(s.Day, s.Start, s.Length.TotalHours))], Json.Default.ShiftJsonArray);

    /// <summary>The dates in a text such as <c>["2026-12-25"]</c>.</summary>
    public static IReadOnlyList<DateOnly> Holidays(string text) =>
        JsonSerializer.Deserialize(text, Json.Default.DateOnlyArray) ?? [];

    /// <summary>The text of dates.</summary>
    public static string Text(IEnumerable<DateOnly> holidays) =>
        JsonSerializer.Serialize([.. holidays], Json.Default.DateOnlyArray);

    internal sealed record ShiftJson(DayOfWeek Day, TimeOnly Start, double Hours);

    [JsonSourceGenerationOptions(JsonSerializerDefaults.Web, UseStringEnumConverter = true)]
    [JsonSerializable(typeof(ShiftJson[]))]
    [JsonSerializable(typeof(DateOnly[]))]
    private sealed partial class Json : JsonSerializerContext;
}
