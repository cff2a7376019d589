using WearWatch.Signals;
using WearWatch.Signals.Passes;

namespace WearWatch.Dashboard.Kit.Words;

/// <summary>The words of signals.</summary>
public static class SignalWords
{
    /// <summary>What a kind tells.</summary>
    public static string Of(TelemetryKind kind) => kind switch
    {
        TelemetryKind.RunningCounter => T["hour counter"],
        TelemetryKind.RunningSwitch => T["running or not"],
        TelemetryKind.RunningPulses => T["speed pulses"],
        TelemetryKind.Length => T["length"],
        TelemetryKind.Passes => T["passes"],
        TelemetryKind.Temperature => T["temperature"],
        _ => T["oil strokes"],
    };

    /// <summary>Why a day of passes is not believed.</summary>
    public static string Of(PassDoubt doubt) => doubt switch
    {
        PassDoubt.TooLittle => T["too few passes"],
        PassDoubt.BadSignal => T["poor signal"],
        PassDoubt.SensorMoved => T["sensor moved"],
        PassDoubt.Backwards => T["runs backwards"],
        PassDoubt.WrongRollers => T["not each roller seen"],
        _ => T["count not certain"],
    };

    /// <summary>A length of time such as 5 h or 3 days.</summary>
    public static string Of(TimeSpan time) => time.TotalHours < 48
        ? Show.Hours(time.TotalHours)
        : T[$"{time.TotalDays:0} days"];
}
