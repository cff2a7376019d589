using System.Text.Json.Serialization;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// Measures of a round-link chain's links on their way in. Lengths and diameters are texts in the unit (<c>15.4</c>,
/// <c>19/64</c>); what was not measured is left out.
/// </summary>
/// <remarks>
/// The maker is whoever is signed in; a maker or a plant that is told here is only compared, and another one refused.
/// </remarks>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record LinkMeasureEntryJson
{
    public string? Chain { get; init; }

    /// <summary>The chain's id in the pack, which stays when it is renamed; it goes before the name.</summary>
    public int? ChainId { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterH { get; init; }

    /// <summary>Which link, where.</summary>
    public string? Place { get; init; }

    /// <summary>With what the length over several links was measured: caliper or tape; caliper if left out.</summary>
    public string? Tool { get; init; }

    /// <summary>Inner length of one link.</summary>
    public string? OneLink { get; init; }

    /// <summary>Length over several links.</summary>
    public string? SeveralLinks { get; init; }

    /// <summary>Over how many; as the chain's table says if left out, and no other number.</summary>
    public int? Links { get; init; }

    /// <summary>Diameter in the crown in the direction of pull.</summary>
    public string? D1 { get; init; }

    /// <summary>Diameter in the crown at right angles to it.</summary>
    public string? D2 { get; init; }

    public string? Unit { get; init; }

    public string? ToldBy { get; init; }

    public int? MakerId { get; init; }

    public string? Plant { get; init; }

    /// <summary>Why earlier ones are put right; asked for there only.</summary>
    public string? Why { get; init; }
}

/// <summary>Measures of links that stand.</summary>
internal sealed record LinkMeasureJson
{
    public required long Id { get; init; }

    public required string Chain { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterH { get; init; }

    public required string Place { get; init; }

    public required string Tool { get; init; }

    public double? OneLinkMm { get; init; }

    public double? SeveralLinksMm { get; init; }

    public int? Links { get; init; }

    public required bool OuterEdges { get; init; }

    public double? D1Mm { get; init; }

    public double? D2Mm { get; init; }

    public required string Written { get; init; }

    public required string ToldBy { get; init; }

    public static LinkMeasureJson Of(LinkMeasureRow row, string chain) => new()
    {
        Id = row.Id,
        Chain = chain,
        TakenAt = row.TakenAt,
        CounterH = row.CounterH,
        Place = row.Place,
        Tool = Tokens.Of(row.Tool),
        OneLinkMm = row.OneLinkMm,
        SeveralLinksMm = row.SeveralLinksMm,
        Links = row.Links,
        OuterEdges = row.OuterEdges,
        D1Mm = row.D1Mm,
        D2Mm = row.D2Mm,
        Written = row.Written,
        ToldBy = row.ToldBy,
    };
}
