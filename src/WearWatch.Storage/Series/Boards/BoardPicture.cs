using WearWatch.Signals;

namespace WearWatch.Storage.Series.Boards;

/// <summary>A picture over time series on a ready-made board.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Note">What to see in it, for a person.</param>
/// <param name="Kind">The kind of telemetry.</param>
/// <param name="Select">What is asked of <see cref="SeriesSchema.Field"/>, in InfluxQL.</param>
/// <param name="Unit">The unit, in the words of the board's format.</param>
/// <param name="Style">How it is drawn.</param>
public sealed record BoardPicture(
    string Title, string Note, TelemetryKind Kind, string Select, string Unit, PanelStyle Style)
{
    private const string Value = $"\"{SeriesSchema.Field}\"";

    /// <summary>
    /// The stretch of time that becomes one point, in InfluxQL; <c>$__interval</c> for what fits the screen.
    /// </summary>
    public string Every { get; init; } = "$__interval";

    /// <summary>What becomes of stretches without a point, in InfluxQL.</summary>
    public string Fill { get; init; } = "none";

    /// <summary>A further condition, in InfluxQL; empty for none.</summary>
    public string Where { get; init; } = "";

    /// <summary>All pictures. Each kind of telemetry has one at least.</summary>
    public static IReadOnlyList<BoardPicture> All { get; } =
    [
        new("Running hours a day", "By hour counters. No day has more than 24; a counter that was set back counts as nothing.",
            TelemetryKind.RunningCounter, $"non_negative_difference(last({Value}))", "h", PanelStyle.Bars) { Every = "1d" },
        new("Runs or stands", "By on/off signals.",
            TelemetryKind.RunningSwitch, $"last({Value})", "bool_on_off", PanelStyle.Steps) { Fill = "previous" },
        new("Speed pulses", "A second. Beside the others of its drive it shows a slipping or a slowed machine.",
            TelemetryKind.RunningPulses, $"non_negative_derivative(last({Value}), 1s)", "hertz",
            PanelStyle.Lines),
        new("Chain temperature", "A chain that gets hotter at the same load lacks oil, or a bearing fails.",
            TelemetryKind.Temperature, $"mean({Value})", "celsius", PanelStyle.Lines),
        new("Measured length",
            "As measured by sensors; the temperature is not taken out. Elongation and forecasts are on WearWatch's own pages.",
            TelemetryKind.Length, $"last({Value})", "lengthmm", PanelStyle.Points),
        new("Rollers or links counted",
            "By the first of two sensors. Less than usual while the chain runs: a sensor is dirty or has moved.",
            TelemetryKind.Passes, $"sum({Value})", "short", PanelStyle.Lines),
        new("Oil a day", "In cubic centimetres, all strokes of a lubricator.",
            TelemetryKind.Oiling, $"sum({Value})", "suffix: cm3", PanelStyle.Bars) { Every = "1d" },
        new("Strokes without oil a day", "Empty reservoir, pinched line or blocked nozzle. Lock the drive out before looking.",
            TelemetryKind.Oiling, $"count({Value})", "short", PanelStyle.Bars)
        {
            Every = "1d",
            Where = $"AND {Value} = 0",
        },
    ];

    /// <summary>The question in InfluxQL, with the board's words for the time shown and the chains chosen.</summary>
    public string Query =>
        $"SELECT {Select} FROM \"{SeriesSchema.Measurements[Kind].Measurement}\" WHERE \"chain\" =~ /^$chain$/ AND \"line\" =~ "
        + $"/^$line$/ "
        + (Where.Length > 0 ? Where + " " : "") + $"AND $timeFilter GROUP BY time({Every}), \"chain\" fill({Fill})";
}
