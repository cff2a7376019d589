using System.Globalization;
using WearWatch.Signals;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage.Series;

/// <summary>
/// How telemetry is written as time series. docs/units-and-formats.md tells it to whoever reads them with another tool.
/// </summary>
/// <remarks>
/// A measurement per kind, tags for where, one field that is always a floating-point number: a server that has once seen another
/// type in a field refuses rows. The time is the sender's, to 100 ns; the last two digits are the row's number modulo 100, so
/// that two messages of one moment are two points, and the same row written twice is one.
/// </remarks>
public static class SeriesSchema
{
    /// <summary>The one field.</summary>
    public const string Field = "value";

    /// <summary>The tags, in the order in which they are written.</summary>
    public static IReadOnlyList<string> Tags { get; } = ["chain", "line", "position"];

    /// <summary>The measurements with the unit of their values.</summary>
    public static IReadOnlyDictionary<TelemetryKind, (string Measurement, string Unit)> Measurements { get; } =
        new Dictionary<TelemetryKind, (string, string)>
        {
            [TelemetryKind.RunningCounter] = ("running_counter", "h"),
            [TelemetryKind.RunningSwitch] = ("running_switch", "1 runs, 0 stands"),
            [TelemetryKind.RunningPulses] = ("running_pulses", "pulses, counted on"),
            [TelemetryKind.Length] = ("length", "mm"),
            [TelemetryKind.Passes] = ("passes", "passes of the first sensor"),
            [TelemetryKind.Temperature] = ("temperature", "degrees Celsius"),
            [TelemetryKind.Oiling] = ("oiling", "cm3 a stroke"),
        };

    /// <summary>A row in line protocol, nanoseconds.</summary>
    public static string Line(TelemetryRow row, ChainRow chain)
    {
        var tags = Tag("chain", chain.Name) + Tag("line", chain.Line) + Tag("position", chain.Position);
        var nanoseconds = (row.At.UtcTicks - DateTimeOffset.UnixEpoch.Ticks) * 100 + row.Id % 100;
        return string.Create(
            CultureInfo.InvariantCulture, $"{Measurements[row.Kind].Measurement}{tags} {Field}={row.Value:R} {nanoseconds}");
    }

    /// <summary>A tag; an empty one is left out, as the protocol wants it.</summary>
    private static string Tag(string name, string value) => value.Length == 0 ? "" : $",{name}={Escaped(value)}";

    private static string Escaped(string value) => value.ReplaceLineEndings(" ")
        .Replace(",", "\\,", StringComparison.Ordinal).Replace("=", "\\=", StringComparison.Ordinal)
        .Replace(" ", "\\ ", StringComparison.Ordinal);
}
