namespace WearWatch.Chains.Links;

/// <summary>A maker's table of one chain as somebody copied it, before it is checked; the pitch stands on the card.</summary>
public sealed record LinkTableEntry
{
    /// <summary>Nothing was told.</summary>
    public static LinkTableEntry None { get; } = new();

    /// <summary>Nominal diameter of the steel in millimetres.</summary>
    public double? DiameterMm { get; init; }

    /// <summary>For what it is used; null when not told.</summary>
    public LinkUse? Use { get; init; }

    /// <summary>Number of links of the length over several; null for the usual 11.</summary>
    public int? Links { get; init; }

    /// <summary>Whether that length is taken over outer edges; a maker's table may mean either.</summary>
    public bool OuterEdges { get; init; }

    /// <summary>Inner length of one link at which the maker discards, in millimetres.</summary>
    public double? OneLinkLimitMm { get; init; }

    /// <summary>Length over several links at which the maker discards, in millimetres.</summary>
    public double? SeveralLinksLimitMm { get; init; }

    /// <summary>Mean diameter at which the maker discards, in millimetres.</summary>
    public double? DiameterLimitMm { get; init; }

    /// <summary>The same mean diameter in inches, where the table has it beside: the two must agree.</summary>
    public double? DiameterLimitInches { get; init; }

    /// <summary>Measured length over as many links of an unworn stretch of the same chain, in millimetres.</summary>
    public double? UnusedSeveralLinksMm { get; init; }

    /// <summary>Whose table it is: maker, document, page.</summary>
    public string Source { get; init; } = "";
}
