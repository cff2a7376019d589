using System.Diagnostics;
using System.Diagnostics.Metrics;

namespace WearWatch.Plant.Settings;

/// <summary>
/// What the worker counts and traces for whoever watches it: the meter and the source of traces <c>WearWatch</c>.
/// </summary>
public static class Meters
{
    /// <summary>The meter's and the source's name.</summary>
    public const string Name = "WearWatch";

    private static readonly Meter Meter = new(Name);

    /// <summary>Traces of jobs and of transactions of telemetry.</summary>
    public static ActivitySource Traces { get; } = new(Name);

    /// <summary>Messages of machines, by what became of them.</summary>
    public static Counter<long> Messages { get; } = Meter.CreateCounter<long>("wearwatch.telemetry.messages", "{message}");

    /// <summary>From the sender's time to the commit.</summary>
    public static Histogram<double> Lag { get; } = Meter.CreateHistogram<double>("wearwatch.telemetry.lag", "s");

    /// <summary>Messages sent on to the store of time series.</summary>
    public static Counter<long> Forwarded { get; } = Meter.CreateCounter<long>("wearwatch.telemetry.forwarded", "{message}");

    /// <summary>How long regular jobs took that came to their end, by job.</summary>
    public static Histogram<double> Jobs { get; } = Meter.CreateHistogram<double>("wearwatch.jobs.duration", "s");

    /// <summary>Counts what became of messages.</summary>
    public static void Count(this Counter<long> counter, long messages, string became) =>
        counter.Add(messages, new KeyValuePair<string, object?>("outcome", became));
}
