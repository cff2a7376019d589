using System.Collections.Frozen;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Units;

namespace WearWatch.Plant.Files;

/// <summary>The words of the file formats and what they stand for.</summary>
public static class FileWords
{
    /// <summary>With what a chain is measured.</summary>
    public static FrozenDictionary<string, Tool> Tools { get; } = Lowered<Tool>();

    /// <summary>The state of a chain's lubrication.</summary>
    public static FrozenDictionary<string, LubricationState> Lubrication { get; } = Lowered<LubricationState>();

    /// <summary>How much dust there is.</summary>
    public static FrozenDictionary<string, DustLevel> Dust { get; } = Lowered<DustLevel>();

    /// <summary>What happens to a chain.</summary>
    public static FrozenDictionary<string, ChainEventKind> Events { get; } = Lowered<ChainEventKind>();

    /// <summary>How oil is brought to a chain.</summary>
    public static FrozenDictionary<string, OilMethod> OilMethods { get; } = Lowered<OilMethod>();

    /// <summary>Units of length.</summary>
    public static FrozenDictionary<string, LengthUnit> Units { get; } =
        new Dictionary<string, LengthUnit> { ["mm"] = LengthUnit.Millimetre, ["in"] = LengthUnit.Inch }.ToFrozenDictionary();

    /// <summary>The word for a value: its name in small letters, with an underscore between words.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum =>
        string.Concat(
            value.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? "_" : "") + char.ToLowerInvariant(c) : c.ToString()));

    private static FrozenDictionary<string, T> Lowered<T>()
        where T : struct, Enum => Enum.GetValues<T>().ToFrozenDictionary(Of);
}
