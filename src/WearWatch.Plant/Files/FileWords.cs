using System.Collections.Frozen;
using WearWatch.Chains;
using WearWatch.Chains.Parts;
using WearWatch.Gauging;
using WearWatch.Storage.Rows;
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

    /// <summary>What a place asks of a chain's oil.</summary>
    public static FrozenDictionary<string, OilPlace> OilPlaces { get; } = Lowered<OilPlace>();

    /// <summary>Of what a chain is made.</summary>
    public static FrozenDictionary<string, ChainMaterial> Materials { get; } = Lowered<ChainMaterial>();

    /// <summary>Parts that are measured beside the elongation.</summary>
    public static FrozenDictionary<string, WearPart> Parts { get; } = Lowered<WearPart>();

    /// <summary>How far a work order is.</summary>
    public static FrozenDictionary<string, WorkOrderState> WorkOrderStates { get; } = Lowered<WorkOrderState>();

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
