using WearWatch.Signals;

namespace WearWatch.Plant.Mappings;

/// <summary>Units that foreign messages tell, by the codes of UCUM and as people write them, brought to our own.</summary>
internal static class SignalUnit
{
    /// <summary>Of an hour counter: what one of it is in hours.</summary>
    private static readonly Dictionary<string, double> HoursIn = new(StringComparer.OrdinalIgnoreCase)
    {
        ["h"] = 1,
        ["hr"] = 1,
        ["hour"] = 1,
        ["hours"] = 1,
        ["min"] = 1 / 60.0,
        ["minutes"] = 1 / 60.0,
        ["s"] = 1 / 3600.0,
        ["sec"] = 1 / 3600.0,
        ["seconds"] = 1 / 3600.0,
        ["ms"] = 1 / 3_600_000.0,
        ["d"] = 24,
        ["days"] = 24,
    };

    /// <summary>The value in the unit of its kind; null where the unit is none of it.</summary>
    public static double? Convert(double value, string unit, TelemetryKind kind) => kind switch
    {
        TelemetryKind.RunningCounter => HoursIn.TryGetValue(unit, out var hours) ? value * hours : null,
        TelemetryKind.Temperature => unit switch
        {
            "Cel" or "C" or "°C" => value,
            "[degF]" or "F" or "°F" => (value - 32) / 1.8,
            "K" => value - 273.15,
            _ => null,
        },
        _ => value, // pulses and states have none
    };
}
