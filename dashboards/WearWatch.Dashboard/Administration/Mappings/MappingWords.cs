using WearWatch.Plant.Telemetry;
using WearWatch.Signals;

namespace WearWatch.Dashboard.Administration.Mappings;

/// <summary>The words of mappings.</summary>
public static class MappingWords
{
    /// <summary>In which form a machine tells.</summary>
    public static string Of(SignalSource source) => source switch
    {
        SignalSource.SparkplugMetric => T["Sparkplug metric"],
        _ => T["JSON by MQTT"],
    };

    /// <summary>How a message tells its time.</summary>
    public static string Of(TimeNotation form) => form switch
    {
        TimeNotation.Iso8601 => T["text by ISO 8601"],
        TimeNotation.UnixSeconds => T["seconds since 1970"],
        TimeNotation.UnixMilliseconds => T["milliseconds since 1970"],
        _ => T["none: arrival counts"],
    };

    /// <summary>The figure of a message with its unit.</summary>
    public static string Of(TelemetryMessage message) => message.Kind switch
    {
        TelemetryKind.RunningSwitch => message.Value > 0 ? T["it runs"] : T["it stands"],
        TelemetryKind.RunningPulses => T[$"{message.Value:#,0} pulses"],
        TelemetryKind.Temperature => T[$"{message.Value:0.0} °C"],
        _ => T[$"{message.Value:#,0.0##} h"],
    };
}
