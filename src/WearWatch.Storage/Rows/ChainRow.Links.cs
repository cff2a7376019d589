using WearWatch.Chains.Links;

namespace WearWatch.Storage.Rows;

/// <summary>What was copied from the maker's table of a round-link chain.</summary>
public sealed partial class ChainRow
{
    /// <summary>Round links: what they are used in; null where it is not told.</summary>
    public LinkUse? LinkUse { get; set; }

    /// <summary>Their nominal diameter, d.</summary>
    public double? LinkDiameterMm { get; set; }

    /// <summary>Over how many links the maker's table gives a length.</summary>
    public int? LinkCount { get; set; }

    /// <summary>Whether that length is taken over outer edges.</summary>
    public bool LinkOuterEdges { get; set; }

    /// <summary>The table's longest inner length of one link.</summary>
    public double? LinkOneLimitMm { get; set; }

    /// <summary>The table's longest length over <see cref="LinkCount"/> links.</summary>
    public double? LinkSeveralLimitMm { get; set; }

    /// <summary>The table's smallest mean diameter.</summary>
    public double? LinkDiameterLimitMm { get; set; }

    /// <summary>The length over <see cref="LinkCount"/> links of an unworn stretch of the same chain.</summary>
    public double? LinkUnusedSeveralMm { get; set; }

    /// <summary>Which table of whom.</summary>
    public string LinkTableSource { get; set; } = "";

    private LinkTableEntry LinkEntry() => new()
    {
        Use = LinkUse,
        DiameterMm = LinkDiameterMm,
        Links = LinkCount,
        OuterEdges = LinkOuterEdges,
        OneLinkLimitMm = LinkOneLimitMm,
        SeveralLinksLimitMm = LinkSeveralLimitMm,
        DiameterLimitMm = LinkDiameterLimitMm,
        UnusedSeveralLinksMm = LinkUnusedSeveralMm,
        Source = LinkTableSource,
    };

    private void Take(LinkTableEntry links)
    {
        (LinkUse, LinkDiameterMm, LinkCount, LinkOuterEdges) = (links.Use, links.DiameterMm, links.Links, links.OuterEdges);
        (LinkOneLimitMm, LinkSeveralLimitMm, LinkDiameterLimitMm) =
            (links.OneLinkLimitMm, links.SeveralLinksLimitMm, links.DiameterLimitMm);
        (LinkUnusedSeveralMm, LinkTableSource) = (links.UnusedSeveralLinksMm, links.Source);
    }
}
