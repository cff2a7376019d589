using System.Text.Json.Serialization;

namespace WearWatch.Worker.Commands;

/// <summary>The answer of <c>wearwatch gauge --json</c>.</summary>
internal sealed record GaugeJson(double ElongationPct, double StandardUncertaintyPct, double ExpandedUncertaintyPct);

/// <summary>The answer of <c>wearwatch limit --json</c>.</summary>
internal sealed record LimitJson(double LimitPct, string Reason, string Source, string Rule);

/// <summary>The answer of <c>wearwatch import --json</c>: a file of it.</summary>
internal sealed record ImportJson(string File, string Kind, int Taken, int AlreadyKnown, int Waiting, int Refused);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, WriteIndented = true)]
[JsonSerializable(typeof(GaugeJson))]
[JsonSerializable(typeof(LimitJson))]
[JsonSerializable(typeof(ImportJson[]))]
internal sealed partial class CommandJson : JsonSerializerContext;
