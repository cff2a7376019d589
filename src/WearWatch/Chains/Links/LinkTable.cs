namespace WearWatch.Chains.Links;

/// <summary>
/// What is known of the links of one round-link chain: size, use, and the maker's own limits where he gives them.
/// </summary>
public sealed record LinkTable
{
    /// <summary>The usual number of links to measure over.</summary>
    public const int UsualLinks = 11;

    private LinkTable(LinkTableEntry told, LinkSize size)
    {
        Size = size;
        (Use, Links, OuterEdges) = (told.Use, told.Links ?? UsualLinks, told.OuterEdges);
        (OneLinkLimitMm, SeveralLinksLimitMm) = (told.OneLinkLimitMm, told.SeveralLinksLimitMm);
        (DiameterLimitMm, UnusedSeveralLinksMm) = (told.DiameterLimitMm, told.UnusedSeveralLinksMm);
        Source = told.Source.Trim();
    }

    /// <summary>The nominal size.</summary>
    public LinkSize Size { get; }

    /// <summary>For what it is used; null when not told.</summary>
    public LinkUse? Use { get; }

    /// <summary>Number of links of the length over several.</summary>
    public int Links { get; }

    /// <summary>Whether that length is taken over outer edges.</summary>
    public bool OuterEdges { get; }

    /// <summary>Inner length of one link at which the maker discards, in millimetres; null where he gives none.</summary>
    public double? OneLinkLimitMm { get; }

    /// <summary>Length over several links at which the maker discards, in millimetres; null where he gives none.</summary>
    public double? SeveralLinksLimitMm { get; }

    /// <summary>Mean diameter at which the maker discards, in millimetres; null where he gives none.</summary>
    public double? DiameterLimitMm { get; }

    /// <summary>Measured length over as many links of an unworn stretch of the same chain, in millimetres; or null.</summary>
    public double? UnusedSeveralLinksMm { get; }

    /// <summary>Whose table it is, or empty.</summary>
    public string Source { get; }

    /// <summary>Nominal length over <see cref="Links"/>, in millimetres.</summary>
    public double NominalSeveralMm => Size.LengthOver(Links, OuterEdges);

    /// <summary>
    /// The maker's limit over several links as an elongation, for readings of a length over pitches; null where he gives none.
    /// </summary>
    public ReplacementLimit? AsElongation => SeveralLinksLimitMm is { } mm
        ? new(100 * (mm - NominalSeveralMm) / (Links * Size.PitchMm), LimitReason.Lifting, Source)
        {
            Rule = $"its maker's table, over {Links} links",
        }
        : null;

    /// <summary>What a measure is when the chain is new, in millimetres: measured where it was, else nominal.</summary>
    public double NewMm(LinkMeasure measure) => measure switch
    {
        LinkMeasure.OneLink => Size.PitchMm,
        LinkMeasure.SeveralLinks => UnusedSeveralLinksMm ?? NominalSeveralMm,
        _ => Size.DiameterMm,
    };

    /// <summary>The table, when <see cref="LinkTableCheck"/> finds nothing wrong with it.</summary>
    /// <param name="told">What was copied from the maker's table.</param>
    /// <param name="pitchMm">Pitch in millimetres.</param>
    /// <exception cref="ArgumentException">Something is wrong with it, or it has no diameter.</exception>
    public static LinkTable Of(LinkTableEntry told, double pitchMm) => LinkTableCheck.Faults(told, pitchMm) is [var first, ..]
        ? throw new ArgumentException(first.Reason.ToString(), nameof(told))
        : new LinkTable(told, LinkSize.Of(told.DiameterMm!.Value, pitchMm));
}
