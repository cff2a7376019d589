using Microsoft.Extensions.Logging;

namespace WearWatch.Plant.Tracking;

/// <summary>What the tracking logs, written for the person on call.</summary>
internal static partial class Log
{
    [LoggerMessage(301, LogLevel.Information, "Fleet model {Version} trained on {Chains} chains")]
    public static partial void FleetModelTrained(this ILogger logger, string version, int chains);

    [LoggerMessage(302, LogLevel.Information,
        "No fleet model yet: {Have} chains show a wear rate, {Need} are needed; the broad prior serves")]
    public static partial void TooFewChainsToLearn(this ILogger logger, int have, int need);

    [LoggerMessage(303, LogLevel.Information, "Constants of wear calibrated on {Chains} chains that have run out; ln of their "
        + "readings' probability rose by {Gain:0.0}")]
    public static partial void Calibrated(this ILogger logger, int chains, double gain);

    [LoggerMessage(
        304, LogLevel.Warning, "The newest fleet model cannot be read; the broad prior serves until the next training")]
    public static partial void FleetModelUnreadable(this ILogger logger, Exception error);
}
