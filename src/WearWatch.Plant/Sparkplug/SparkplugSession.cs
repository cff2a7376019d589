using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Sparkplug;

/// <summary>
/// An edge node with its metrics, as the messages move it: births name metrics and give them aliases, deaths make their values
/// stale, numbers that are missing ask for new births (Sparkplug 3.0, 5 and 6).
/// </summary>
/// <remarks>It changes rows alone; whoever loaded them saves them together with what the messages told.</remarks>
public sealed class SparkplugSession(SparkplugNodeRow node, List<SparkplugMetricRow> metrics)
{
    /// <summary>A message that is behind by less than this came late; one that is ahead shows that some are lost.</summary>
    private const int HalfOfNumbers = 128;

    private static readonly Phrase NotBorn = $"No birth of this node or device is known. Births were asked for.";
    private static readonly Phrase NotNamed = $"The last birth does not name this metric. New births were asked for.";

    /// <summary>The node.</summary>
    public SparkplugNodeRow Node => node;

    /// <summary>Its metrics and its devices'.</summary>
    public IReadOnlyList<SparkplugMetricRow> Metrics => metrics;

    /// <summary>Takes one message, in the order in which they arrive.</summary>
    public SparkplugTaken Take(SparkplugTopic topic, SparkplugPayload payload, DateTimeOffset receivedAt)
    {
        switch (topic.Type)
        {
            case "NBIRTH":
                return Born(payload, receivedAt);
            case "NDEATH":
                if (node.BdSeq is null || payload.BdSeq is null || payload.BdSeq == node.BdSeq) Die(receivedAt);
                return SparkplugTaken.Nothing;
            case "DBIRTH":
                return InOrder(payload, receivedAt) ? Names(topic.Device, payload, receivedAt) : Unborn();
            case "DDEATH":
                if (InOrder(payload, receivedAt)) Stale(topic.Device);
                return SparkplugTaken.Nothing;
            default:
                return InOrder(payload, receivedAt) ? Data(topic.Device, payload, receivedAt) : Unborn();
        }
    }

    private SparkplugTaken Born(SparkplugPayload payload, DateTimeOffset receivedAt)
    {
        if (!node.IsOnline || payload.BdSeq != node.BdSeq) node.Since = receivedAt;
        (node.IsOnline, node.WantsBirth, node.LastAt) = (true, false, receivedAt);
        (node.BdSeq, node.Seq, node.BornAt) = (payload.BdSeq, payload.Seq, payload.At);
        // The devices are born anew after their node: until then their aliases say nothing.
        foreach (var metric in metrics) (metric.Alias, metric.IsStale) = (null, true);
        return Names("", payload, receivedAt);
    }

    private void Die(DateTimeOffset receivedAt)
    {
        if (node.IsOnline || node.Since is null) node.Since = receivedAt;
        (node.IsOnline, node.WantsBirth, node.LastAt) = (false, false, receivedAt);
        foreach (var metric in metrics) metric.IsStale = true;
    }

    private void Stale(string device)
    {
        foreach (var metric in metrics.Where(m => m.Device == device)) (metric.Alias, metric.IsStale) = (null, true);
    }

    private SparkplugTaken Unborn()
    {
        node.WantsBirth = true;
        return new SparkplugTaken([], NotBorn);
    }

    /// <summary>Whether the message belongs to a birth that is known. Its number says whether one before it was lost.</summary>
    private bool InOrder(SparkplugPayload payload, DateTimeOffset receivedAt)
    {
        node.LastAt = receivedAt;
        if (!node.IsOnline || payload.At < node.BornAt) return false;
        if (payload.Seq is not { } seq || node.Seq is not { } last) return true;
        var ahead = (seq - last + 256) % 256;
        if (ahead > 1) node.WantsBirth = true;
        if (ahead < HalfOfNumbers) node.Seq = seq;
        return true;
    }

    private SparkplugTaken Names(string device, SparkplugPayload payload, DateTimeOffset receivedAt)
    {
        Stale(device);
        var readings = new List<SparkplugReading>();
        foreach (var metric in payload.Metrics.Where(m => m.Name.Length > 0 && m.Name != SparkplugPayload.Session))
        {
            var row = metrics.Find(m => m.Device == device && m.Name == metric.Name);
            if (row is null)
                metrics.Add(row = new SparkplugMetricRow { NodeId = node.Id, Device = device, Name = metric.Name });
            (row.Alias, row.DataType, row.IsStale) = (metric.Alias, metric.DataType, false);
            readings.AddRange(Reading(row, metric, payload, receivedAt));
        }

        return new SparkplugTaken(readings, null);
    }

    private SparkplugTaken Data(string device, SparkplugPayload payload, DateTimeOffset receivedAt)
    {
        var readings = new List<SparkplugReading>();
        Phrase? fault = null;
        foreach (var metric in payload.Metrics)
        {
            var row = metrics.Find(m => !m.IsStale && (metric.Name.Length > 0
                ? m.Device == device && m.Name == metric.Name
                : m.Alias is not null && m.Alias == metric.Alias));
            if (row is null) (fault, node.WantsBirth) = (NotNamed, true);
            else readings.AddRange(Reading(row, metric, payload, receivedAt));
        }

        return new SparkplugTaken(readings, fault);
    }

    private static IEnumerable<SparkplugReading> Reading(
        SparkplugMetricRow row, SparkplugMetric metric, SparkplugPayload payload, DateTimeOffset receivedAt)
    {
        var at = metric.At ?? payload.At ?? receivedAt;
        var value = metric.Value(metric.DataType > 0 ? metric.DataType : row.DataType);
        if (!metric.IsHistorical) (row.Value, row.At) = (value?.GetRawText() ?? "", at);
        if (value is { } told) yield return new SparkplugReading(row, told, at);
    }
}
