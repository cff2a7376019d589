using System.Text.Json;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Sparkplug;

/// <summary>A value of a metric that was understood.</summary>
/// <param name="Metric">The metric, as its birth named it.</param>
/// <param name="Value">Its value.</param>
/// <param name="At">Its time.</param>
public sealed record SparkplugReading(SparkplugMetricRow Metric, JsonElement Value, DateTimeOffset At);
