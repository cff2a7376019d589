using WearWatch.Criteria;
using WearWatch.Phrases;

namespace WearWatch.Chains.Links;

/// <summary>The limits of the three measures of a round link: its maker's, else general ones, shown as such.</summary>
/// <remarks>
/// The maker's table decides on lengths; general lengths hold only where he gives none. A diameter is never allowed to come below
/// 0.9 d, whatever a table says. Of several that hold the strictest governs. General limits are for chains that hold a load; a
/// conveyor's chain has its maker's or none. The general figures are those of <see cref="LiftingCriteria"/>. Sources:
/// docs/references.md [64], [74], [75], [81], [84], [85].
/// </remarks>
public sealed record LinkLimits
{
    private LinkLimits(IReadOnlyList<LinkLimit> all) => All = all;

    /// <summary>The one that governs of each measure that has a limit.</summary>
    public IReadOnlyList<LinkLimit> All { get; }

    /// <summary>What has to be said about them.</summary>
    public IReadOnlyList<Phrase> Remarks { get; private init; } = [];

    /// <summary>The limit that governs a measure; null where none is known.</summary>
    public LinkLimit? Of(LinkMeasure measure) => All.FirstOrDefault(limit => limit.Measure == measure);

    /// <summary>The limits of a chain.</summary>
    /// <param name="table">Its size, and its maker's limits.</param>
    /// <param name="holdsLoad">Whether it lifts or holds a load.</param>
    /// <param name="region">Whose general limits hold.</param>
    public static LinkLimits For(LinkTable table, bool holdsLoad, LawRegion region)
    {
        LinkLimit[] own = [.. Makers(table)];
        LinkLimit[] general = holdsLoad ? [.. General(table, region)] : [];
        var binding = own.Concat(general.Where(g => !g.IsLength || own.All(o => o.Measure != g.Measure)));
        return new([.. binding.GroupBy(l => l.Measure).OrderBy(g => g.Key)
            .Select(g => g.Aggregate((best, next) => next.IsStricterThan(best) ? next : best))])
        {
            Remarks = holdsLoad ? [.. RemarksOn(table, region)] : [],
        };
    }

    private static IEnumerable<LinkLimit> Makers(LinkTable table)
    {
        (LinkMeasure, double?)[] given =
        [
            (LinkMeasure.OneLink, table.OneLinkLimitMm), (LinkMeasure.SeveralLinks, table.SeveralLinksLimitMm),
            (LinkMeasure.MeanDiameter, table.DiameterLimitMm),
        ];
        foreach (var (measure, limit) in given)
            if (limit is { } mm) yield return new(measure, mm, $"its maker's table", table.Source) { Certainty = $"as entered" };
    }

    private static IEnumerable<LinkLimit> General(LinkTable table, LawRegion region)
    {
        yield return new(LinkMeasure.MeanDiameter, Figure("link-diameter") / 100 * table.Size.DiameterMm,
            $"mean of two diameters below 0.9 of nominal", "EN, several makers; docs/references.md [75]")
        { IsGeneral = true };

        var (american, european) = (IsAmerican(region), region is not LawRegion.UnitedStates);
        if (table.Use is LinkUse.Sling)
        {
            // The figure of the United States is the stricter one, so it holds where the region is not set, too.
            var (percent, source) = american
                ? (Figure("sling-length-us"), "USA, removal list; docs/references.md [84]")
                : (Figure("sling-length"), "Germany, DGUV Information 209-021; docs/references.md [81]");
            yield return Longer(LinkMeasure.OneLink, percent, source);
            yield return Longer(LinkMeasure.SeveralLinks, percent, source);
            if (american && OshaChainSize.Of(table.Size.DiameterMm) is { } row)
                yield return new(LinkMeasure.ThinnestDiameter, row.MinimumMm,
                    $"{row.Size} in chain at least {row.Minimum} in at any point",
                    "USA, OSHA Table N-184-1; docs/references.md [85]")
                { IsGeneral = true, Certainty = row.IsVerified ? Phrase.Of($"published") : $"from memory" };
            yield break;
        }

        const string german = "Germany, one maker's limit tables by DIN 685-5; docs/references.md [74]";
        yield return Longer(LinkMeasure.OneLink, Figure("link-one"), german) with { Certainty = Typical };
        if (european) yield return Longer(LinkMeasure.SeveralLinks, Figure("link-eleven"), german) with { Certainty = Typical };
        if (american)
            yield return Longer(LinkMeasure.SeveralLinks,
                Figure(table.Use is LinkUse.HandHoist ? "link-length-hand" : "link-length-powered"),
                (table.Use is LinkUse.HandHoist ? "hand-operated" : "powered")
                + " hoist, USA, DOE-STD-1090; docs/references.md [64]");

        LinkLimit Longer(LinkMeasure measure, double percent, string source) => new(
            measure, (1 + percent / 100) * table.NewMm(measure),
            IsMeasuredNew(measure) ? Phrase.Of($"{percent:0.#} % longer than unused") : $"{percent:0.#} % longer than "
                + $"nominal", source)
        { IsGeneral = true };

        double Figure(string criterion) => LiftingCriteria.ValueOf(criterion);

        bool IsMeasuredNew(LinkMeasure measure) => measure is LinkMeasure.SeveralLinks && table.UnusedSeveralLinksMm is not null;
    }

    // Where the region is not set, or has no figures of its own here, the strictest of all holds.
    private static bool IsAmerican(LawRegion region) =>
        region is LawRegion.UnitedStates or LawRegion.NotSet or LawRegion.Australia;

    private static readonly Phrase Typical = $"published, typical of 22 table rows and no standard's figure";

    private static IEnumerable<Phrase> RemarksOn(LinkTable table, LawRegion region)
    {
        var isWhole = table is { OneLinkLimitMm: not null, SeveralLinksLimitMm: not null, DiameterLimitMm: not null };
        if (isWhole && table.Use is not LinkUse.Sling) yield break;
        if (!isWhole)
            yield return $"General values are used where the maker's table was not entered; enter the maker's limits.";
        if (table.Use is null) yield return $"Its use is not recorded: taken as a powered hoist's chain, the strictest.";
        if (region is LawRegion.NotSet) yield return $"The plant's region is not set: the strictest general value holds.";
        if (table.Use is LinkUse.Sling && IsAmerican(region) && OshaChainSize.Of(table.Size.DiameterMm) is null)
            yield return $"OSHA Table N-184-1 has no row for {table.Size.DiameterMm:0.###} mm and is never interpolated: "
                + $"the maker's smallest diameter decides.";
    }
}
