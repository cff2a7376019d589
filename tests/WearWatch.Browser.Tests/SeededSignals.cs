using WearWatch.Signals;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Browser.Tests;

/// <summary>Three mappings, one of them in three versions, and three edge nodes with a metric each.</summary>
internal static class SeededSignals
{
    public static async Task AddAsync(WearDb db, DateTimeOffset now)
    {
        foreach (var version in Enumerable.Range(1, 3))
            db.SignalMappings.Add(Mapping("nodes", version, now, SignalSource.SparkplugMetric, $"Mill/N{4 - version}"));
        db.SignalMappings.Add(Mapping("press hours", 1, now.AddDays(-2), SignalSource.MqttJson, "site/{machine}/hours"));
        db.SignalMappings.Add(Mapping("kiln", 1, now.AddDays(-1), SignalSource.MqttJson, "kiln/{machine}", isActive: false));
        foreach (var i in Enumerable.Range(0, 3))
        {
            var node = new SparkplugNodeRow
            {
                Group = "Mill",
                Node = $"N{i}",
                IsOnline = i > 0,
                Since = now.AddHours(-i),
                LastAt = now.AddMinutes(-10 * i),
            };
            db.SparkplugNodes.Add(node);
            await db.SaveChangesAsync();
            db.SparkplugMetrics.Add(new SparkplugMetricRow
            {
                NodeId = node.Id,
                Device = "",
                Name = $"Drive {2 - i}/Hours",
                Value = $"{100 + i}",
                At = now.AddMinutes(-10 * i),
                IsStale = i == 0,
            });
        }
    }

    private static SignalMappingRow Mapping(
        string name, int version, DateTimeOffset at, SignalSource source, string topic, bool isActive = true) => new()
        {
            Name = name,
            Version = version,
            Source = source,
            Topic = topic,
            ValuePath = source == SignalSource.MqttJson ? "$.h" : $"Drive {version}/Hours",
            Kind = isActive ? TelemetryKind.RunningCounter : TelemetryKind.Temperature,
            Chain = $"chain of {name}",
            IsActive = isActive,
            SavedAt = at.AddHours(version),
            SavedBy = $"Person {4 - version}",
        };
}
