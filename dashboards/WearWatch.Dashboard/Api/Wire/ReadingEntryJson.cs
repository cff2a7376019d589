using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using WearWatch.Gauging;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// A reading on its way in: the fields of <see cref="ReadingColumns"/>. The length is told as text in its unit
/// (<c>1219.4</c>, <c>48 3/16</c>), by caliper as inside and outside of the end rollers, or as a number in millimetres.
/// </summary>
/// <remarks>
/// The maker is whoever is signed in; a maker or a plant that is told here is only compared, and another one refused.
/// </remarks>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record ReadingEntryJson
{
    public string? Chain { get; init; }

    /// <summary>The chain's id in the pack, which stays when it is renamed; it goes before the name.</summary>
    public int? ChainId { get; init; }

    public string? Length { get; init; }

    public string? Unit { get; init; }

    public double? LengthMm { get; init; }

    public string? Inside { get; init; }

    public string? Outside { get; init; }

    public bool? Confirmed { get; init; }

    public string? ToldBy { get; init; }

    public int? MakerId { get; init; }

    public string? Plant { get; init; }

    /// <summary>What was told beside the length, as text by column: it is held to the rules of the file.</summary>
    [JsonIgnore]
    public Dictionary<string, string> Texts { get; } = [];

    /// <summary>Adds the reading's fields to the shape.</summary>
    public static void Shape(JsonTypeInfo shape)
    {
        if (shape.Type == typeof(ReadingEntryJson))
            ColumnProperties.AddEntry<ReadingEntryJson, Reading>(shape, 1, ReadingColumns.BesideLength, wire => wire.Texts);
    }

    /// <summary>What it tells beside the length, which is still to be understood.</summary>
    public Reading Facts(out IReadOnlyList<(string Column, Phrase Reason)> faults)
    {
        var row = RowFields.Of(ReadingColumns.BesideLength.Select(c => c.Name), Texts, TimeZoneInfo.Utc);
        var told = row.Fill(ReadingColumns.BesideLength, ReadingText.Blank(Chain ?? ""));
        faults = row.Faults;
        return told;
    }
}
