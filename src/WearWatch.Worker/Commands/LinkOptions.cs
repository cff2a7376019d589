using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text.Json;
using WearWatch.Chains.Links;
using WearWatch.Links;
using WearWatch.Plant.Bench;
using WearWatch.Plant.Files;

namespace WearWatch.Worker.Commands;

/// <summary>The options of <c>wearwatch gauge</c> for round links, and how their answer is told.</summary>
internal static class LinkOptions
{
    private static readonly string[] measures = ["--one-link", "--over-links", "--d1", "--d2", "--link-diameters"];

    /// <summary>The options. Lengths are millimetres, or bear their unit.</summary>
    public static IEnumerable<Option> All =>
    [
        BenchOptions.Text("one-link", "Of round links: inner length of one link, such as 15.4 or \"39/64 in\"."),
        BenchOptions.Text("over-links", "Length over several links; --length-mm over as many pitches counts as well."),
        BenchOptions.Text("d1", "Diameter in the crown in the direction of pull."),
        BenchOptions.Text("d2", "Diameter in the crown at right angles to it."),
        BenchOptions.Text("link-diameters", "Both diameters at once, such as \"17.1; 17.3\"."),
        BenchOptions.Text("link-diameter-new", "Nominal diameter of the link; as its type if not given."),
        BenchOptions.Whole("links", "Over how many links; 11 if not given."),
        BenchOptions.Tick("outer-edges", "The length over links, and its limit, are taken over outer edges."),
        BenchOptions.Text("unused-links", "Length over as many links of an unworn section of the same chain."),
        BenchOptions.Text("one-link-limit", "The maker's limit of one link."),
        BenchOptions.Text("over-links-limit", "The maker's limit over several links."),
        BenchOptions.Text("diameter-limit", "The maker's least mean diameter."),
        BenchOptions.Number("diameter-limit-in", "The same in inches, where the table has it beside: the two must agree."),
        BenchOptions.Text("table-source", "Whose table it is; needed with a limit."),
        BenchOptions.Text(
            "link-use", "Without a table: " + string.Join(", ", Enum.GetValues<LinkUse>().Select(FileWords.Of)) + "."),
        BenchOptions.Text("region", "Whose general values hold without a table, such as germany or united_states; "
            + "the strictest if not given."),
    ];

    /// <summary>Whether a measure of links is given.</summary>
    public static bool AreGiven(CommandResult result) => measures.Any(name => result.GetResult(name) is not null);

    /// <summary>Tells what links say, the verdict and the caution first.</summary>
    public static void Tell(Screen screen, LinkCalculation worked, bool asJson)
    {
        if (asJson)
        {
            screen.Output.WriteLine(JsonSerializer.Serialize(LinkGaugeJson.Of(worked), BenchJson.InEnglish.LinkGaugeJson));
            return;
        }

        screen.Output.WriteLine($"{worked.ShownCondition.Words}: {worked.Verdict.Sentence}");
        if (worked.HoldsLoad) foreach (var caution in worked.Cautions) screen.Output.WriteLine($"Caution: {caution}");
        TellMeasures(screen, worked);
    }

    /// <summary>Tells each measure, whether it is wear or stretch, and what has to be said about the limits.</summary>
    public static void TellMeasures(Screen screen, LinkCalculation worked)
    {
        screen.Output.WriteLine($"Links of {worked.Table.Size}:");
        foreach (var finding in worked.Verdict.Findings)
        {
            var used = finding.Limit is { } limit
                ? Text($"{Math.Max(0, finding.UsedPercent!.Value),4:0} % of the way to {limit.Mm:0.00} mm, {limit.Basis}")
                : "no limit is known";
            screen.Output.WriteLine(
                Text($"  {LinkWords.Of(finding.Measure).ToString(),-28}{finding.ValueMm,8:0.00} mm ")
                    + Text($"± {finding.ExpandedUncertaintyMm:0.00}  ")
                    + used);
        }

        if (worked.Verdict.Stretch is { } stretch) screen.Output.WriteLine(stretch.Sentence);
        foreach (var remark in worked.Limits.Remarks) screen.Output.WriteLine(remark);
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
