namespace WearWatch.Dashboard.Api.Wire;

/// <summary>The plant.</summary>
internal sealed record PlantJson
{
    public required string Name { get; init; }

    public required string TimeZone { get; init; }

    public required double Utilisation { get; init; }

    public required double RunningHPerWeek { get; init; }

    public required bool IsSimulated { get; init; }

    public required int Chains { get; init; }

    public required IReadOnlyDictionary<string, int> ChainsByCondition { get; init; }
}
