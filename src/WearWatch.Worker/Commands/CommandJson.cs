using System.Text.Json.Serialization;

namespace WearWatch.Worker.Commands;

/// <summary>The answer of <c>wearwatch import --json</c>: a file of it.</summary>
internal sealed record FileTakenInJson(string File, string Kind, int Taken, int AlreadyKnown, int Waiting, int Refused);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, WriteIndented = true)]
[JsonSerializable(typeof(FileTakenInJson[]))]
internal sealed partial class CommandJson : JsonSerializerContext;
