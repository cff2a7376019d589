using System.Globalization;

namespace WearWatch.SensorSim.Files;

/// <summary>Writes <c>readings.csv</c>: what was measured.</summary>
public static class ReadingsFile
{
    /// <summary>Writes the file, for the whole history or for a stretch of live running that goes into an inbox.</summary>
    public static void Write(TextWriter writer, IEnumerable<WrittenReading> readings)
    {
        CsvText.Write(writer, "chain", "taken_at", "counter_h", "tool", "place", "pitches", "length", "unit", "temperature_c");
        foreach (var reading in readings)
        {
            CsvText.Write(
                writer,
                reading.Chain,
                CsvText.Moment(reading.TakenAt),
                CsvText.Number(reading.CounterHours, 1),
                reading.Tool.ToString().ToLowerInvariant(),
                reading.Place,
                reading.Pitches.ToString(CultureInfo.InvariantCulture),
                reading.Length,
                reading.Unit,
                reading.TemperatureC?.ToString(CultureInfo.InvariantCulture) ?? "");
        }
    }
}
