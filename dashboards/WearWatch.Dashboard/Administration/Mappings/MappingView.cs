using WearWatch.Plant.Mappings;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Mappings;

/// <summary>What the page of a mapping shows.</summary>
/// <param name="Versions">The versions of the mapping, the newest first; none of a new one.</param>
/// <param name="Heard">The last messages of foreign topics, the newest first.</param>
/// <param name="Metrics">The metrics that edge nodes told of.</param>
/// <param name="Chains">The names of the chains.</param>
public sealed record MappingView(
    IReadOnlyList<SignalMappingRow> Versions, IReadOnlyList<HeardMessageRow> Heard, IReadOnlyList<NodeMetric> Metrics,
    IReadOnlyList<string> Chains);
