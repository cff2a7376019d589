using WearWatch.Chains;

namespace WearWatch.Plant.Bench;

/// <summary>A chain type of the catalogue: each value with its source and whether it was read there.</summary>
public sealed record ChainTypeJson(
    string Designation, IReadOnlyList<string> AlsoCalled, string Counterpart, string Standard, string Family, int Strands,
    IReadOnlyList<double> PitchChoicesMm, IReadOnlyList<ChainValueJson> Values)
{
    public static ChainTypeJson Of(ChainType type) => new(
        type.Designation, type.AlsoCalled, type.Counterpart, type.Standard, type.Family.Name, type.Strands, type.PitchChoicesMm,
        [.. TypeValue.Of(type).Where(v => v.Value is not null)
            .Select(v => new ChainValueJson(v.Key, v.Value!.Value.Value, v.Value.Value.Source, v.Value.Value.IsVerified))]);
}

/// <summary>One value of a chain type; its unit stands at the end of its name.</summary>
public sealed record ChainValueJson(string Name, double Value, string Source, bool Verified);

/// <summary>A stretch of the catalogue.</summary>
public sealed record ChainTypePageJson(int Total, int Skip, IReadOnlyList<ChainTypeJson> ChainTypes);
