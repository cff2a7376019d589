using System.Globalization;
using System.Text.Json;
using WearWatch.Plant.Telemetry;
using WearWatch.Signals;

namespace WearWatch.Plant.Mappings;

/// <summary>Reads the figure and the time that a mapping finds in a message.</summary>
internal static class SignalFigure
{
    private const int Shown = 40;
    private const double LargestDecimal = 1e13;

    /// <summary>A number as it stands, or as text; a state is 1 or 0.</summary>
    public static double? Number(JsonElement found, TelemetryKind kind) => found.ValueKind switch
    {
        JsonValueKind.Number when found.TryGetDouble(out var number) && double.IsFinite(number) => number,
        JsonValueKind.True when kind == TelemetryKind.RunningSwitch => 1,
        JsonValueKind.False when kind == TelemetryKind.RunningSwitch => 0,
        JsonValueKind.String => Number(found.GetString()!.Trim(), kind),
        _ => null,
    };

    /// <summary>A figure times a scale, plus an offset: in decimals as people write them, so that tenths stay tenths.</summary>
    public static double Scaled(double number, double scale, double offset) =>
        scale.Equals(1) && offset.Equals(0) ? number
        : Math.Max(Math.Max(Math.Abs(number), Math.Abs(scale)), Math.Abs(offset)) < LargestDecimal
            ? (double)((decimal)number * (decimal)scale + (decimal)offset)
        : number * scale + offset;

    /// <summary>A time in the form that the mapping names.</summary>
    public static DateTimeOffset? Time(JsonElement found, TimeNotation form)
    {
        if (form == TimeNotation.Iso8601)
            return found.ValueKind == JsonValueKind.String ? SenderTime.Read(found.GetString()!) : null;
        if (Number(found, TelemetryKind.RunningCounter) is not { } number) return null;
        var milliseconds = form == TimeNotation.UnixSeconds ? number * 1000 : number;
        return Math.Abs(milliseconds) < 1e14 ? DateTimeOffset.UnixEpoch.AddTicks((long)Math.Round(milliseconds * 10_000)) : null;
    }

    /// <summary>What was found, short enough to be read.</summary>
    public static string Raw(JsonElement found)
    {
        var raw = found.GetRawText();
        return raw.Length <= Shown ? raw : raw[..Shown] + "...";
    }

    private static double? Number(string text, TelemetryKind kind) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            && double.IsFinite(number) ? number
        : kind != TelemetryKind.RunningSwitch ? null
        : text.ToUpperInvariant() switch { "ON" or "TRUE" => 1, "OFF" or "FALSE" => 0, _ => null };
}
