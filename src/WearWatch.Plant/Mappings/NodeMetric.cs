using WearWatch.Plant.Sparkplug;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Mappings;

/// <summary>A metric with whose it is.</summary>
/// <param name="Node">The edge node.</param>
/// <param name="Metric">The metric, of the node or of one of its devices.</param>
public sealed record NodeMetric(SparkplugNodeRow Node, SparkplugMetricRow Metric)
{
    /// <summary>Group, node and, where there is one, device, as a mapping names them.</summary>
    public string Owner => Metric.Device.Length > 0 ? $"{Node.Group}/{Node.Node}/{Metric.Device}" : $"{Node.Group}/{Node.Node}";

    /// <summary>Whose it is and its name.</summary>
    public string Address => $"{Owner} {Metric.Name}";

    /// <summary>Under which topic it would come.</summary>
    internal SparkplugTopic Topic => new(Node.Group, "NDATA", Node.Node, Metric.Device);
}
