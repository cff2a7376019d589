using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using WearWatch.Chains;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A chain as the register has it: its name and the fields of <see cref="ChainColumns"/>.</summary>
internal sealed record ChainCardJson
{
    public required string Chain { get; init; }

    /// <summary>What stands against the use of a chain that lifts or holds a load; null for any other.</summary>
    public LiftingNowJson? Lifting { get; init; }

    [JsonIgnore]
    public ChainCard Card { get; init; } = null!;

    /// <summary>Adds the card's fields to the shape.</summary>
    public static void Shape(JsonTypeInfo shape)
    {
        if (shape.Type != typeof(ChainCardJson)) return;
        ColumnProperties.AddAnswer<ChainCardJson, ChainCard>(
            shape, 1, ChainColumns.Fields, wire => wire.Card, new ChainCard { Name = "", PitchMm = 1 });
    }
}
