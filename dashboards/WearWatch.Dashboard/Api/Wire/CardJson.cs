using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// A chain's whole card: the fields of <see cref="ChainColumns"/>. Sent to change it, it carries the revision from which the
/// sender set out, who and why.
/// </summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record CardJson
{
    public int? Revision { get; init; }

    public string? By { get; init; }

    public string? Why { get; init; }

    /// <summary>The card that is sent out.</summary>
    [JsonIgnore]
    public ChainCard? Card { get; init; }

    /// <summary>The card that was sent in, as text by column: it is held to the rules of the file and of the form.</summary>
    [JsonIgnore]
    public Dictionary<string, string> Texts { get; } = [];

    /// <summary>The card as it is sent out.</summary>
    public static CardJson Of(ChainRow row) => new() { Card = row.ToCard(), Revision = row.Revision };

    /// <summary>Adds the card's fields to the shape.</summary>
    public static void Shape(JsonTypeInfo shape)
    {
        if (shape.Type == typeof(CardJson))
            ColumnProperties.AddBoth<CardJson, ChainCard>(shape, ChainColumns.Fields, wire => wire.Card!, wire => wire.Texts);
    }
}
