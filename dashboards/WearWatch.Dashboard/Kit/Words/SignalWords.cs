using System.Globalization;
using WearWatch.Signals;
using WearWatch.Signals.Passes;

namespace WearWatch.Dashboard.Kit.Words;

/// <summary>The words of signals.</summary>
public static class SignalWords
{
    /// <summary>What a kind tells.</summary>
    public static string Of(TelemetryKind kind) => kind switch
    {
        TelemetryKind.RunningCounter => "hour counter",
        TelemetryKind.RunningSwitch => "running or not",
        TelemetryKind.RunningPulses => "speed pulses",
        TelemetryKind.Length => "length",
        TelemetryKind.Passes => "passes",
        TelemetryKind.Temperature => "temperature",
        _ => "oil strokes",
    };

    /// <summary>Why a day of passes is not believed.</summary>
    public static string Of(PassDoubt doubt) => doubt switch
    {
        PassDoubt.TooLittle => "too few passes",
        PassDoubt.BadSignal => "poor signal",
        PassDoubt.SensorMoved => "sensor moved",
        PassDoubt.Backwards => "runs backwards",
        PassDoubt.WrongRollers => "not each roller seen",
        _ => "count not certain",
    };

    /// <summary>A length of time such as 5 h or 3 days.</summary>
    public static string Of(TimeSpan time) => time.TotalHours < 48
        ? time.TotalHours.ToString("0", CultureInfo.InvariantCulture) + " h"
        : time.TotalDays.ToString("0", CultureInfo.InvariantCulture) + " days";
}
