using WearWatch.Phrases;

namespace WearWatch.Chains.Links;

/// <summary>Finds misprints in a maker's table: a limit that no maker sets is refused with its reason.</summary>
/// <remarks>
/// Limits of the diameter lie between 0.80 and 0.95 of d, those of a length between 1.01 and 1.12 of new. Derived from the
/// makers'
/// tables behind docs/references.md [74]; two misprints met there were 21.2 mm for a chain of 5 mm, and 5.9 mm beside 0.239 in.
/// </remarks>
public static class LinkTableCheck
{
    private const double LeastDiameterShare = 0.80;
    private const double MostDiameterShare = 0.95;
    private const double LeastLengthShare = 1.01;
    private const double MostLengthShare = 1.12;
    private const double MmPerInch = 25.4;
    private const int FewestLinks = 2;
    private const int MostLinks = 41;

    /// <summary>A new chain differs from nominal by no more than this share, longer or shorter. From memory.</summary>
    private const double NewLengthShare = 0.015;

    /// <summary>Two figures that are rounded each in its unit agree as closely as this.</summary>
    private const double UnitsAgreeMm = 0.06;

    // 0.95 times 5 is a hair below 4.75 in a computer.
    private const double Rounding = 1e-9;

    /// <summary>What cannot be; empty when all of it may.</summary>
    /// <param name="told">What was copied from the maker's table.</param>
    /// <param name="pitchMm">Pitch in millimetres.</param>
    public static IReadOnlyList<LinkTableFault> Faults(LinkTableEntry told, double pitchMm)
    {
        if (told.DiameterMm is not { } d)
            return [new(nameof(told.DiameterMm), $"Give the link's nominal diameter: all limits are held against it.")];
        if (LinkSize.Fault(d, pitchMm) is { } wrongSize) return [new(nameof(told.DiameterMm), wrongSize)];
        if (told.Links is not (null or (>= FewestLinks and <= MostLinks)))
            return [new(nameof(told.Links), $"A length over links is taken over {FewestLinks} to {MostLinks} of them.")];
        return [.. FaultsOf(told, LinkSize.Of(d, pitchMm))];
    }

    private static IEnumerable<LinkTableFault> FaultsOf(LinkTableEntry told, LinkSize size)
    {
        var links = told.Links ?? LinkTable.UsualLinks;
        var severalMm = size.LengthOver(links, told.OuterEdges);
        if (told.OneLinkLimitMm is { } one && Length(one, size.PitchMm, $"one link") is { } wrongOne)
            yield return new(nameof(told.OneLinkLimitMm), wrongOne);
        if (told.SeveralLinksLimitMm is { } several && Length(several, severalMm, $"{links} links") is { } wrongSeveral)
            yield return new(nameof(told.SeveralLinksLimitMm), wrongSeveral);
        if (told.DiameterLimitMm is { } limit && Diameter(limit, size.DiameterMm) is { } wrongDiameter)
            yield return new(nameof(told.DiameterLimitMm), wrongDiameter);
        if (told is { DiameterLimitMm: { } mm, DiameterLimitInches: { } inches }
            && Math.Abs(mm - inches * MmPerInch) > UnitsAgreeMm)
            yield return new(nameof(told.DiameterLimitInches),
                $"{inches:0.####} in are {inches * MmPerInch:0.00} mm, not {mm:0.###} mm: one of the two is misprinted. "
                + $"Ask the maker; until then enter the larger.");
        if (told.UnusedSeveralLinksMm is { } unused && !(Math.Abs(unused / severalMm - 1) <= NewLengthShare))
            yield return new(nameof(told.UnusedSeveralLinksMm),
                $"{links} new links of {size} measure {severalMm:0.#} mm within {100 * NewLengthShare:0.#} %, "
                + $"not {unused:0.###} mm.");
        if (told.Source.Trim().Length == 0
            && (told.OneLinkLimitMm ?? told.SeveralLinksLimitMm ?? told.DiameterLimitMm) is not null)
            yield return new(nameof(told.Source), $"Say whose table it is: maker, document, page.");
    }

    private static Phrase? Length(double limitMm, double newMm, Phrase over) =>
        limitMm / newMm is >= LeastLengthShare - Rounding and <= MostLengthShare + Rounding
            ? default(Phrase)
            : $"{limitMm:0.###} mm over {over} is {limitMm / newMm:0.000} of "
                + $"the {newMm:0.###} mm when new; "
                + $"{Between(LeastLengthShare, MostLengthShare)} A misprint, another size, or outer in place of inner edges? "
                + $"Ask the maker.";

    private static Phrase? Diameter(double limitMm, double newMm) =>
        limitMm / newMm is >= LeastDiameterShare - Rounding and <= MostDiameterShare + Rounding
            ? default(Phrase)
            : $"{limitMm:0.###} mm is {limitMm / newMm:0.000} of the {newMm:0.###} mm when new; "
                + $"{Between(LeastDiameterShare, MostDiameterShare)} A misprint, or another size? Ask the maker.";

    private static Phrase Between(double least, double most) =>
        $"makers' limits lie between {least:0.00} and {most:0.00}.";
}
