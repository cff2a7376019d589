using WearWatch.Chains;

namespace WearWatch.Plant.Bench;

/// <summary>A chain type of the catalogue: each value with its source and whether it was read there.</summary>
public sealed record ChainTypeJson
{
    /// <summary>Its designation by the standard, strands and pitch included.</summary>
    public required string Designation { get; init; }

    /// <summary>Other names of the same chain.</summary>
    public required IReadOnlyList<string> AlsoCalled { get; init; }

    /// <summary>A chain of another standard that runs on the same sprockets; empty for none.</summary>
    public required string Counterpart { get; init; }

    /// <summary>The standard.</summary>
    public required string Standard { get; init; }

    /// <summary>The kind of chain, by its name in files.</summary>
    public required string Family { get; init; }

    /// <summary>Strands on common pins.</summary>
    public required int Strands { get; init; }

    /// <summary>The pitches in millimetres in which it is made, where there is a choice.</summary>
    public required IReadOnlyList<double> PitchChoicesMm { get; init; }

    /// <summary>Its dimensions and strengths, as far as they are known.</summary>
    public required IReadOnlyList<ChainValueJson> Values { get; init; }

    /// <summary>The wire form of a type.</summary>
    public static ChainTypeJson Of(ChainType type) => new()
    {
        Designation = type.Designation,
        AlsoCalled = type.AlsoCalled,
        Counterpart = type.Counterpart,
        Standard = type.Standard,
        Family = type.Family.Name,
        Strands = type.Strands,
        PitchChoicesMm = type.PitchChoicesMm,
        Values = [.. TypeValue.Of(type).Where(v => v.Value is not null)
            .Select(v => new ChainValueJson(v.Key, v.Value!.Value.Value, v.Value.Value.Source, v.Value.Value.IsVerified))],
    };
}
