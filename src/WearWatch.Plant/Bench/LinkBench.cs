using WearWatch.Chains;
using WearWatch.Chains.Links;
using WearWatch.Gauging;
using WearWatch.Links;

namespace WearWatch.Plant.Bench;

/// <summary>Answers what measures of a round-link chain's links mean, each against its own limit.</summary>
/// <remarks>
/// Names: <c>type</c> or <c>pitch_mm</c> with <c>link_diameter_new</c>; <c>one_link</c>, <c>over_links</c>, <c>d1</c> and
/// <c>d2</c> (or both as <c>link_diameters</c>) in <c>unit</c>; <c>links</c>, <c>outer_edges</c>, <c>unused_links</c>; the
/// maker's table: <c>one_link_limit</c>, <c>over_links_limit</c>, <c>diameter_limit</c>, <c>diameter_limit_in</c>,
/// <c>table_source</c>; else <c>link_use</c> and <c>region</c>; <c>tool</c> of the length over links; <c>lifts</c>.
/// </remarks>
public static class LinkBench
{
    private static readonly string[] measures = ["one_link", "over_links", "d1", "d2", "link_diameters"];

    private static readonly Dictionary<string, string> names = new()
    {
        [nameof(LinkTableEntry.DiameterMm)] = "link_diameter_new",
        [nameof(LinkTableEntry.Links)] = "links",
        [nameof(LinkTableEntry.OneLinkLimitMm)] = "one_link_limit",
        [nameof(LinkTableEntry.SeveralLinksLimitMm)] = "over_links_limit",
        [nameof(LinkTableEntry.DiameterLimitMm)] = "diameter_limit",
        [nameof(LinkTableEntry.DiameterLimitInches)] = "diameter_limit_in",
        [nameof(LinkTableEntry.UnusedSeveralLinksMm)] = "unused_links",
        [nameof(LinkTableEntry.Source)] = "table_source",
        [nameof(MeasuredLinks.OneLinkMm)] = "one_link",
        [nameof(MeasuredLinks.SeveralLinksMm)] = "over_links",
        [nameof(MeasuredLinks.D1Mm)] = "d1",
        [nameof(MeasuredLinks.D2Mm)] = "d2",
        [nameof(MeasuredLinks.Tool)] = "tool",
    };

    /// <summary>Whether anything of links is asked.</summary>
    public static bool IsAsked(Asked asked) => measures.Any(asked.Told);

    /// <summary>What the measures mean, or what of the question cannot be read.</summary>
    public static BenchAnswer<LinkCalculation> Answer(Asked asked)
    {
        var type = asked.Type("type");
        var @case = LimitBench.Case(asked, type);
        if (@case.PitchMm is null && asked.Wrong.Count == 0) asked.Refuse("pitch_mm", $"Give the pitch or the chain type.");
        if (!IsAsked(asked)) asked.Refuse("one_link", $"Measure one link, a length over links, or the diameters.");
        return asked.Wrong.Count == 0 && Of(asked, type, @case, null) is { } worked
            ? new BenchAnswer<LinkCalculation>.Answered(worked)
            : new BenchAnswer<LinkCalculation>.Refused(asked.Wrong);
    }

    /// <summary>What the measures mean; null with what is wrong noted.</summary>
    /// <param name="asked">What is asked.</param>
    /// <param name="type">The chain type, when one was named.</param>
    /// <param name="case">The chain; its pitch is known.</param>
    /// <param name="overLinksMm">A length over as many links that was measured anyway; null for none.</param>
    internal static LinkCalculation? Of(Asked asked, ChainType? type, LimitCase @case, double? overLinksMm)
    {
        var unit = asked.Unit("unit");
        var both = asked.Lengths("link_diameters", unit).Select(d => d.Millimetres).ToList();
        if (asked.Told("link_diameters") && both.Count != 2)
            asked.Refuse("link_diameters", $"Two diameters, in the direction of pull and at right angles, such as 17.1; 17.3.");
        var told = new MeasuredLinks
        {
            Tool = asked.Word<Tool>("tool") ?? Tool.Caliper,
            OneLinkMm = Mm("one_link"),
            SeveralLinksMm = Mm("over_links") ?? overLinksMm,
            D1Mm = Mm("d1") ?? (both.Count == 2 ? both[0] : null),
            D2Mm = Mm("d2") ?? (both.Count == 2 ? both[1] : null),
        };
        var entry = new LinkTableEntry
        {
            DiameterMm = Mm("link_diameter_new") ?? type?.LinkDiameterMm?.Value,
            Use = asked.Word<LinkUse>("link_use"),
            Links = asked.Whole("links", 2, 41),
            OuterEdges = asked.Tick("outer_edges"),
            OneLinkLimitMm = Mm("one_link_limit"),
            SeveralLinksLimitMm = Mm("over_links_limit"),
            DiameterLimitMm = Mm("diameter_limit"),
            DiameterLimitInches = asked.Number("diameter_limit_in", 0.01, 10),
            UnusedSeveralLinksMm = Mm("unused_links"),
            Source = asked.Text("table_source"),
        };
        var region = asked.Word<LawRegion>("region") ?? LawRegion.NotSet;
        foreach (var fault in LinkTableCheck.Faults(entry, @case.PitchMm!.Value))
            asked.Refuse(names[fault.Field], $"{fault.Reason}");
        if (asked.Wrong.Count > 0) return null;
        var table = LinkTable.Of(entry, @case.PitchMm.Value);
        foreach (var fault in LinkFaults.Of(told, table)) asked.Refuse(names[fault.Field], $"{fault.Reason}");
        if (asked.Wrong.Count > 0) return null;
        var limits = LinkLimits.For(table, @case.Lifts, region);
        return new LinkCalculation
        {
            Table = table,
            Limits = limits,
            Verdict = LinkVerdict.Of(told, table, limits),
            Family = @case.Family,
            HoldsLoad = @case.Lifts,
        };

        double? Mm(string name) => asked.Length(name, unit)?.Millimetres;
    }
}
