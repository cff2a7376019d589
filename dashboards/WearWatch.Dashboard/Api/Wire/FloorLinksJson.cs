using WearWatch.Chains.Links;
using WearWatch.Links;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What a phone has to know to judge the links of a chain without signal.</summary>
internal sealed record FloorLinksJson(int Links, bool OuterEdges, IReadOnlyList<FloorLinkMarkJson> Marks)
{
    /// <summary>The links of a chain; null for a chain whose table is not known.</summary>
    public static FloorLinksJson? Of(LinkTable? table, bool holdsLoad, Chains.LawRegion region) => table is null
        ? null
        : new(table.Links, table.OuterEdges,
            [.. LinkMark.Of(table, LinkLimits.For(table, holdsLoad, region)).Select(FloorLinkMarkJson.Of)]);
}

/// <summary>From where on a measure says what.</summary>
internal sealed record FloorLinkMarkJson
{
    /// <summary>one_link, several_links, mean_diameter or thinnest_diameter.</summary>
    public required string Measure { get; init; }

    /// <summary>What is measured, in words.</summary>
    public required string Name { get; init; }

    /// <summary>Whether it grows towards its limit; diameters shrink.</summary>
    public required bool Grows { get; init; }

    public required double NewMm { get; init; }

    /// <summary>From here on a competent person sets the date.</summary>
    public required double PlanMm { get; init; }

    /// <summary>From here on the limit may be reached within the uncertainty of a caliper.</summary>
    public required double OutMm { get; init; }

    /// <summary>The same by tape; null for what no tape measures.</summary>
    public double? OutByTapeMm { get; init; }

    public required double LimitMm { get; init; }

    /// <summary>Who says so, and how sure it is.</summary>
    public required string Basis { get; init; }

    public static FloorLinkMarkJson Of(LinkMark mark) => new()
    {
        Measure = Tokens.Of(mark.Limit.Measure),
        Name = T[LinkWords.Of(mark.Limit.Measure)],
        Grows = mark.Limit.IsLength,
        NewMm = mark.NewMm,
        PlanMm = mark.PlanMm,
        OutMm = mark.OutMm,
        OutByTapeMm = mark.OutByTapeMm,
        LimitMm = mark.Limit.Mm,
        Basis = T[mark.Limit.Basis],
    };
}
