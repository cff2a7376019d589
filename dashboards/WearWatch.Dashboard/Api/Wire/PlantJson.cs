namespace WearWatch.Dashboard.Api.Wire;

/// <summary>The plant.</summary>
internal sealed record PlantJson(
    string Name, string TimeZone, double Utilisation, double RunningHPerWeek, bool IsSimulated, int Chains,
    IReadOnlyDictionary<string, int> ChainsByCondition);
