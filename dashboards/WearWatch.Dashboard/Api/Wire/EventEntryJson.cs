using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using WearWatch.Chains;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>An event on its way in: the fields of <see cref="EventColumns"/>.</summary>
/// <remarks>
/// The maker is whoever is signed in; a maker or a plant that is told here is only compared, and another one refused.
/// </remarks>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record EventEntryJson
{
    public string? Chain { get; init; }

    /// <summary>The chain's id in the pack, which stays when it is renamed; it goes before the name.</summary>
    public int? ChainId { get; init; }

    public bool? Confirmed { get; init; }

    public string? ToldBy { get; init; }

    public int? MakerId { get; init; }

    public string? Plant { get; init; }

    /// <summary>What was told, as text by column: it is held to the rules of the file.</summary>
    [JsonIgnore]
    public Dictionary<string, string> Texts { get; } = [];

    /// <summary>Adds the event's fields to the shape.</summary>
    public static void Shape(JsonTypeInfo shape)
    {
        if (shape.Type == typeof(EventEntryJson))
            ColumnProperties.AddEntry<EventEntryJson, ChainEvent>(shape, 1, EventColumns.All, wire => wire.Texts);
    }

    /// <summary>The event; null with what is wrong with it.</summary>
    public ChainEvent? Read(out IReadOnlyList<(string Column, Phrase Reason)> faults)
    {
        Texts["chain"] = Chain ?? "";
        var row = RowFields.Of(FileColumns.Events.All, Texts, TimeZoneInfo.Utc);
        var told = EventText.Read(row);
        faults = row.Faults;
        return told;
    }
}
