using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>Something that happened to a chain: the fields of <see cref="EventColumns"/>, and who told it when.</summary>
internal sealed record EventJson
{
    public required long Id { get; init; }

    public required string Chain { get; init; }

    public required string ToldBy { get; init; }

    public required DateTimeOffset ReceivedAt { get; init; }

    /// <summary>What was told.</summary>
    [JsonIgnore]
    public ChainEvent Told { get; init; } = null!;

    public static EventJson Of(EventRow row, string chain) =>
        new() { Id = row.Id, Chain = chain, ToldBy = row.ToldBy, ReceivedAt = row.ReceivedAt, Told = row.ToEvent(chain) };

    /// <summary>Adds the event's fields to the shape.</summary>
    public static void Shape(JsonTypeInfo shape)
    {
        if (shape.Type != typeof(EventJson)) return;
        ColumnProperties.AddAnswer<EventJson, ChainEvent>(
            shape, 2, EventColumns.All, wire => wire.Told, new ChainEvent { Chain = "", Kind = default });
    }
}
