namespace WearWatch.Dashboard.Tests.Language;

/// <summary>How long a text on a page may be, so that it is read at one glance.</summary>
internal static class ReadingRules
{
    private const int HeadingWords = 4, NoticeWords = 25, ParagraphWords = 60;

    /// <summary>What may be longer, by a mark of its element, with the reason.</summary>
    private static readonly (string Mark, string Reason)[] longer =
    [
        ("swap-name", "the button of a chain on the plan board carries the chain's condition and name"),
        ("class=\"pick\"", "the button of a chain in a list carries its condition, name, line and position"),
        ("(A) and", "the heading of a comparison carries the two names that a person chose"),
    ];

    /// <summary>What is too long on a page.</summary>
    public static IEnumerable<string> Faults(string html) =>
    [
        .. TooLong(html, @"<h[1-3]\b[^>]*>(?<text>.*?)</h[1-3]>", HeadingWords, "heading"),
        .. TooLong(html, @"<button\b[^>]*>(?<text>.*?)</button>", HeadingWords, "button"),
        .. TooLong(html, @"<a\b[^>]*class=""button\b[^>]*>(?<text>.*?)</a>", HeadingWords, "button"),
        .. TooLong(html, @"<p\b[^>]*class=""remark\b[^>]*>(?<text>.*?)</p>", NoticeWords, "notice"),
        .. TooLong(html, @"<p\b[^>]*>(?<text>.*?)</p>", ParagraphWords, "paragraph"),
    ];

    private static IEnumerable<string> TooLong(string html, string pattern, int most, string what) =>
        from found in VisibleText.Elements(html, pattern)
        let text = found.Text
        let words = text.Split(' ').Count(w => w.Any(char.IsLetter))
        where words > most && !longer.Any(l => found.Element.Contains(l.Mark, StringComparison.Ordinal))
        select $"{what} of {words} words: {text}";
}
