using System.ComponentModel.DataAnnotations;

namespace WearWatch.Plant.Webhooks;

/// <summary>The settings of the section <c>WearWatch:Webhooks</c>.</summary>
public sealed class WebhookOptions
{
    /// <summary>
    /// What tells this plant's events from those of others (CloudEvents 1.0, <c>source</c>): where people open WearWatch, or any
    /// other URI reference.
    /// </summary>
    [Required(AllowEmptyStrings = false)]
    public string Source { get; set; } = "/wearwatch";

    /// <summary>
    /// The hosts that an administrator can enter, parted by semicolons, <c>*.example.org</c> for all below a name; empty for all.
    /// </summary>
    public string Hosts { get; set; } = "";

    /// <summary>Whether receivers on this machine are allowed, by http too.</summary>
    public bool Loopback { get; set; }

    /// <summary>How often is looked for events to tell and to send; from a tenth of a second to ten minutes.</summary>
    [Range(typeof(TimeSpan), "00:00:00.1", "00:10:00", ConvertValueInInvariantCulture = true,
        ParseLimitsInInvariantCulture = true)]
    public TimeSpan Every { get; set; } = TimeSpan.FromSeconds(2);
}
