using System.Net;
using System.Text.RegularExpressions;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>What a person reads of a page, a script or a source.</summary>
internal static partial class VisibleText
{
    /// <summary>The text of a page, with what is read out or shown beside it, a part a line.</summary>
    public static string OfPage(string html)
    {
        var seen = Hidden().Replace(html, " ");
        var spoken = Attribute().Matches(seen).Select(m => m.Groups[1].Value);
        return WebUtility.HtmlDecode(Tag().Replace(seen, "\n") + "\n" + string.Join('\n', spoken));
    }

    /// <summary>Each element of some kinds, as it is and its text with the inner tags taken out.</summary>
    public static IEnumerable<(string Element, string Text)> Elements(string html, string pattern) =>
        from Match found in Regex.Matches(Hidden().Replace(html, " "), pattern, RegexOptions.Singleline)
        let text = WebUtility.HtmlDecode(Tag().Replace(found.Groups["text"].Value, " "))
        select (found.Value, Space().Replace(text, " ").Trim());

    /// <summary>The texts of a source: what stands between quotation marks, and between the tags of a page.</summary>
    /// <remarks>Values that are put in are left out: a name in the code is no word on a screen.</remarks>
    public static IEnumerable<string> OfSource(string file, string source)
    {
        var plain = Comment().Replace(source, "");
        var quoted = Quoted().Matches(PutIn().Replace(plain, " ")).Select(m => m.Value).Where(s => Worded().IsMatch(s));
        return file.EndsWith(".razor", StringComparison.Ordinal)
            ? quoted.Concat(Between().Matches(RazorComment().Replace(plain, "")).Select(m => m.Groups[1].Value))
            : quoted;
    }

    [GeneratedRegex("<(script|style|svg)\\b.*?</\\1>|<!--.*?-->", RegexOptions.Singleline)]
    private static partial Regex Hidden();

    [GeneratedRegex("(?:aria-label|title|placeholder)=\"([^\"]*)\"")]
    private static partial Regex Attribute();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    [GeneratedRegex(@"^\s*//.*$", RegexOptions.Multiline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"@\*.*?\*@", RegexOptions.Singleline)]
    private static partial Regex RazorComment();

    [GeneratedRegex("\"(?:[^\"\\\\\n]|\\\\.)*\"|'(?:[^'\\\\\n]|\\\\.)*'|`[^`]*`")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\$?\{[^{}\n]*\}")]
    private static partial Regex PutIn();

    [GeneratedRegex("[A-Za-z] [A-Za-z]|^.[A-Z]")]
    private static partial Regex Worded();

    [GeneratedRegex(@">([^<>@{}();=]*)<")]
    private static partial Regex Between();
}
