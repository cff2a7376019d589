using System.Collections.Frozen;
using WearWatch.Chains.Links;
using Column = WearWatch.Plant.Files.FileColumn<WearWatch.Chains.ChainCard>;

namespace WearWatch.Plant.Files;

/// <summary>What a card tells of a round-link chain's links: what was copied from its maker's table.</summary>
internal static class LinkColumns
{
    /// <summary>The heading under which a form asks for it.</summary>
    public static Phrase Heading { get; } = $"Round links: maker's table";

    private const double MostMm = 10_000;

    private static readonly FrozenDictionary<string, LinkUse> uses =
        Enum.GetValues<LinkUse>().ToFrozenDictionary(FileWords.Of);

    /// <summary>The fields in the order in which a person asks for them.</summary>
    public static IReadOnlyList<Column> Fields { get; } =
    [
        Column.Word("link_use", uses, c => c.LinkEntry.Use,
                (c, v) => c with { LinkEntry = c.LinkEntry with { Use = v } }, always: false) with
        {
            Meaning = "what round links are used in",
            Asked = new(Heading, $"Used in")
            {
                Choices =
                [
                    ("", $"not recorded"), (FileWords.Of(LinkUse.PoweredHoist), $"powered hoist"),
                    (FileWords.Of(LinkUse.HandHoist), $"hand-operated hoist"), (FileWords.Of(LinkUse.Sling), $"sling"),
                ],
            },
        },
        Millimetres("link_diameter_mm", "nominal diameter of its links", $"Nominal diameter d",
            $"left out: that of the chain type",
            e => e.DiameterMm, (e, v) => e with { DiameterMm = v }),
        Column.Whole("link_count", 2, 41, c => c.LinkEntry.Links,
                (c, v) => c with { LinkEntry = c.LinkEntry with { Links = v } }, always: false) with
        {
            Meaning = "over how many links a length is measured",
            Asked = new(Heading, $"Length over", $"links", $"left out: 11"),
        },
        Column.Flag("link_outer_edges", c => c.LinkEntry.OuterEdges,
                (c, v) => c with { LinkEntry = c.LinkEntry with { OuterEdges = v } }) with
        {
            Meaning = "whether that length is taken over outer edges",
            Asked = new(Heading, $"over outer edges; ask the maker which his table means"),
        },
        Millimetres("link_one_limit_mm", "inner length of one link at which its maker discards", $"Discard: one link, L1",
            $"inner length; left out: a general value", e => e.OneLinkLimitMm, (e, v) => e with { OneLinkLimitMm = v }),
        Millimetres("link_several_limit_mm", "length over links at which its maker discards", $"Discard: length over links",
            $"left out: a general value", e => e.SeveralLinksLimitMm, (e, v) => e with { SeveralLinksLimitMm = v }),
        Millimetres("link_diameter_limit_mm", "mean diameter at which its maker discards", $"Discard: mean diameter dm",
            $"left out: 0.9 d", e => e.DiameterLimitMm, (e, v) => e with { DiameterLimitMm = v }),
        Millimetres("link_unused_several_mm", "length over as many links of an unworn section of it", $"Unworn length over links",
            $"the same chain's slack end; left out: nominal", e => e.UnusedSeveralLinksMm,
            (e, v) => e with { UnusedSeveralLinksMm = v }),
        Column.Text("link_table_source", c => c.LinkEntry.Source,
                (c, v) => c with { LinkEntry = c.LinkEntry with { Source = v } }, always: false) with
        {
            Meaning = "whose table it is",
            Asked = new(Heading, $"Whose table", Hint: $"maker, document, page; needed with a limit"),
        },
    ];

    /// <summary>What of a table cannot be is told by the column in which it stands.</summary>
    public static string Of(LinkTableFault fault) => fault.Field switch
    {
        nameof(LinkTableEntry.Links) => "link_count",
        nameof(LinkTableEntry.OneLinkLimitMm) => "link_one_limit_mm",
        nameof(LinkTableEntry.SeveralLinksLimitMm) => "link_several_limit_mm",
        nameof(LinkTableEntry.DiameterLimitMm) or nameof(LinkTableEntry.DiameterLimitInches) => "link_diameter_limit_mm",
        nameof(LinkTableEntry.UnusedSeveralLinksMm) => "link_unused_several_mm",
        nameof(LinkTableEntry.Source) => "link_table_source",
        _ => "link_diameter_mm",
    };

    private static Column Millimetres(
        string column, string meaning, Phrase name, Phrase hint, Func<LinkTableEntry, double?> of,
        Func<LinkTableEntry, double?, LinkTableEntry> with) =>
        Column.Number(column, 0.001, MostMm, c => of(c.LinkEntry), (c, v) => c with { LinkEntry = with(c.LinkEntry, v) },
            always: false) with
        {
            Meaning = meaning,
            Asked = new(Heading, name, $"mm", hint),
        };
}
