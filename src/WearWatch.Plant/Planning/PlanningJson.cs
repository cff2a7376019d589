using System.Text.Json.Serialization;

namespace WearWatch.Plant.Planning;

/// <summary>The wire shapes of the swap plan, for the command line and the API alike.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, WriteIndented = true)]
[JsonSerializable(typeof(PlanJson))]
[JsonSerializable(typeof(PlanEntryJson))]
[JsonSerializable(typeof(WhatIfJson))]
[JsonSerializable(typeof(StopPackageJson))]
[JsonSerializable(typeof(IReadOnlyList<StopPackageJson>))]
public sealed partial class PlanningJson : JsonSerializerContext;
