using WearWatch.Plant.Telemetry;

namespace WearWatch.Plant.Mappings;

/// <summary>What a mapping would make of a message that came, or of a metric.</summary>
/// <param name="From">The topic, or the metric with its node.</param>
/// <param name="Message">What it would become; null where it cannot be read.</param>
/// <param name="Why">Why it could not be used; nothing to say where it could.</param>
public sealed record TrialLine(string From, TelemetryMessage? Message, Phrase Why);
