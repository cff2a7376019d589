using System.Text.Json.Serialization;

namespace WearWatch.Learning;

/// <summary>How the statistics of a model are written.</summary>
[JsonSerializable(typeof(FleetStatistics))]
internal sealed partial class FleetJson : JsonSerializerContext;
