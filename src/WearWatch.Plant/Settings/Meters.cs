using System.Diagnostics;
using System.Diagnostics.Metrics;

namespace WearWatch.Plant.Settings;

/// <summary>
/// What the worker counts and traces for whoever watches it: the meter and the source of traces <c>WearWatch</c>.
/// </summary>
/// <remarks>
/// Named by the semantic conventions of OpenTelemetry: instruments and attributes of our own begin with <c>wearwatch.</c>, units
/// are those of UCUM, a failure says its <c>error.type</c>.
/// </remarks>
public static class Meters
{
    /// <summary>The meter's and the source's name.</summary>
    public const string Name = "WearWatch";

    /// <summary>The attribute that says what became of a message: <c>stored</c>, <c>known</c> or <c>set_aside</c>.</summary>
    public const string Outcome = "wearwatch.outcome";

    /// <summary>The attribute with the name of a job.</summary>
    public const string JobName = "wearwatch.job.name";

    /// <summary>The attribute with the name of a check of health.</summary>
    public const string CheckName = "wearwatch.check.name";

    /// <summary>The attribute with the kind of a failure; not there where nothing failed.</summary>
    public const string ErrorType = "error.type";

    private static readonly Meter Meter = new(Name);

    /// <summary>Traces of jobs and of transactions of telemetry.</summary>
    public static ActivitySource Traces { get; } = new(Name);

    /// <summary>Messages of machines, by what became of them.</summary>
    public static Counter<long> Messages { get; } = Meter.CreateCounter<long>(
        "wearwatch.telemetry.messages", "{message}", "Messages of machines, by what became of them.");

    /// <summary>From the sender's time to the commit.</summary>
    public static Histogram<double> Lag { get; } = Seconds(
        "wearwatch.telemetry.lag", "From the sender's time to the commit.", [0.1, 0.5, 1, 5, 10, 30, 60, 300, 1800, 7200, 43200]);

    /// <summary>Messages sent on to the store of time series.</summary>
    public static Counter<long> Forwarded { get; } = Meter.CreateCounter<long>(
        "wearwatch.telemetry.forwarded", "{message}", "Messages sent on to the store of time series.");

    /// <summary>How long regular jobs took, by job.</summary>
    public static Histogram<double> Jobs { get; } = Seconds(
        "wearwatch.job.duration", "How long regular jobs took.", [0.01, 0.1, 0.5, 1, 5, 10, 30, 60, 300, 900, 3600]);

    /// <summary>How each check of health stands: 2 healthy, 1 degraded, 0 unhealthy.</summary>
    public static Gauge<int> Health { get; } = Meter.CreateGauge<int>(
        "wearwatch.health.status", description: "How each check of health stands: 2 healthy, 1 degraded, 0 unhealthy.");

    /// <summary>Counts what became of messages.</summary>
    public static void Count(this Counter<long> counter, long messages, string became) =>
        counter.Add(messages, new KeyValuePair<string, object?>(Outcome, became));

    /// <summary>Keeps how long a job took.</summary>
    /// <param name="jobs">The instrument.</param>
    /// <param name="job">The job's name.</param>
    /// <param name="took">How long it took.</param>
    /// <param name="failure">Why it failed; null where it did not.</param>
    public static void Keep(this Histogram<double> jobs, string job, TimeSpan took, Exception? failure)
    {
        var about = new TagList { { JobName, job } };
        if (failure is not null) about.Add(ErrorType, failure.GetType().FullName);
        jobs.Record(took.TotalSeconds, about);
    }

    private static Histogram<double> Seconds(string name, string about, double[] bounds) => Meter.CreateHistogram(
        name, "s", about, tags: null, new InstrumentAdvice<double> { HistogramBucketBoundaries = bounds });
}
