using System.ComponentModel.DataAnnotations;

namespace WearWatch.Plant.Telemetry;

/// <summary>The settings of the section <c>WearWatch:Telemetry</c>.</summary>
public sealed class TelemetryOptions
{
    /// <summary>The plant's level in the topics.</summary>
    [Required(AllowEmptyStrings = false)]
    public string Plant { get; set; } = "plant";

    /// <summary>How many days single messages are kept; what came of them is kept for ever. 7 to 3,650.</summary>
    [Range(7, 3650)]
    public int RawDays { get; set; } = 30;

    /// <summary>How many days sums by the hour are kept before they become sums by the day. 31 to 36,500.</summary>
    [Range(31, 36500)]
    public int HourlyDays { get; set; } = 400;
}
