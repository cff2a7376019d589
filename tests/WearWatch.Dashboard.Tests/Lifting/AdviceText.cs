using System.Net;
using System.Text.RegularExpressions;

namespace WearWatch.Dashboard.Tests.Lifting;

/// <summary>What must never be told of a chain that lifts, found in a text as a person reads it.</summary>
/// <remarks>
/// A sentence that forbids is no advice: "never shorten it". Source of the list: docs/safety.md, Chains that lift or hold a load.
/// </remarks>
internal static partial class AdviceText
{
    /// <summary>The sentences of a page or an answer that tell what must never be told.</summary>
    /// <param name="text">HTML, JSON, CSV or plain text.</param>
    public static IEnumerable<string> Forbidden(string text) =>
        Sentences(text).Where(s => Repair().IsMatch(s) || Release().IsMatch(s)).Where(s => !Forbids().IsMatch(s));

    /// <summary>Whether the words that stop a hand from a lifting chain are in a text.</summary>
    /// <param name="text">HTML, JSON, CSV or plain text.</param>
    public static bool HasCaution(string text) => Visible(text).Contains("competent person", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether a text says how a chain is: a condition, a limit, a date until which it lasts.</summary>
    /// <param name="text">HTML, JSON, CSV or plain text.</param>
    public static bool Judges(string text) => Judgement().IsMatch(Visible(text));

    /// <summary>Whether a page of chains that lift alone shows the colour of release.</summary>
    /// <param name="html">The page.</param>
    public static bool ShowsGreen(string html) => Green().IsMatch(Hidden().Replace(html, " "));

    private static IEnumerable<string> Sentences(string text) =>
        Ends().Split(Visible(text)).Select(s => s.Trim()).Where(s => s.Length > 0);

    private static string Visible(string text)
    {
        var seen = WebUtility.HtmlDecode(Tags().Replace(Hidden().Replace(text, " "), "\n"));
        return Spaces().Replace(seen, m => m.Value.Contains('\n', StringComparison.Ordinal) ? "\n" : " ");
    }

    /// <summary>Shortening, splicing, repair of single links, oil as a remedy, use of a part of a pair.</summary>
    [GeneratedRegex(
        @"\bshorten|take(n|s)? out \w+ pitch|set (it|the take-up) back|(with|new|mm|[0-9]) (connecting|offset) link"
        + @"|\bsplic|(?<!each leg after )\bweld(?! spatter|s of upright|ed links|ed-steel)"
        + @"|replace (the chain or )?(the|a|one) link|oil it, keep|take pitches out"
        + @"|press (it|the pin) back",
        RegexOptions.IgnoreCase)]
    private static partial Regex Repair();

    /// <summary>Words that release, and those of chains that do not lift.</summary>
    [GeneratedRegex(
        @"(?<!whether it )\bis safe\b|\bapproved\b(?! by the hoist's maker)"
        + @"|ok to lift|fit for use|passed (its |the )?examination|remaining (load|factor)"
        + @"|\bswap now\b|\bplan a swap\b|\bwithin limit\b|look at the sprockets",
        RegexOptions.IgnoreCase)]
    private static partial Regex Release();

    /// <summary>The words of conditions on screens and wires, and the fields that rest on a judgement.</summary>
    [GeneratedRegex(
        @"wear within limits|wear_within_limits|planning.limit.reached|limit for planning|take.out.of.use|cannot.be.judged"
        + @"|early_date|remaining_h",
        RegexOptions.IgnoreCase)]
    private static partial Regex Judgement();

    [GeneratedRegex("tone-green", RegexOptions.IgnoreCase)]
    private static partial Regex Green();

    [GeneratedRegex(@"\b(never|not|no|nobody|nothing|only a competent person)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Forbids();

    [GeneratedRegex(@"(?<=[.!?;:])\s+|\n+|""")]
    private static partial Regex Ends();

    [GeneratedRegex(@"[ \t\r]+|\s*\n\s*")]
    private static partial Regex Spaces();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();

    /// <summary>Scripts, styles, comments, and the choices of filters, which name what other chains may be.</summary>
    [GeneratedRegex("<(script|style|select|datalist)\\b.*?</\\1>|<!--.*?-->", RegexOptions.IgnoreCase | RegexOptions.Singleline)]
    private static partial Regex Hidden();
}
