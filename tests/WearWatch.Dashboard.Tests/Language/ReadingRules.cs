using System.Text.RegularExpressions;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>How long a text on a page may be, so that it is read at one glance.</summary>
internal static partial class ReadingRules
{
    private const int HeadingWords = 4, NoticeWords = 25, ParagraphWords = 60;

    /// <summary>What may be longer, by a mark of its element, with the reason.</summary>
    private static readonly (string Mark, string Reason)[] longer =
    [
        ("swap-name", "the button of a chain on the plan board carries the chain's condition and name"),
        ("class=\"pick\"", "the button of a chain in a list carries its condition, name, line and position"),
        ("(A) ", "the heading of a comparison carries the two names that a person chose"),
    ];

    /// <summary>
    /// What German and Spanish say where English says it by the order of words or by an apostrophe (lifting chains: cadenas de
    /// elevación): in a heading or on a button it is no word of its own.
    /// </summary>
    private static readonly HashSet<string> small = new(StringComparer.OrdinalIgnoreCase)
    {
        "de", "del", "la", "el", "los", "las", "un", "una", "a", "al", "en", "y", "o", "por", "para", "con", "que", "se", "su",
        "der", "die", "das", "den", "dem", "des", "ein", "eine", "einen", "einer", "im", "am", "zur", "zum",
    };

    /// <summary>What is too long on a page.</summary>
    public static IEnumerable<string> Faults(string html) =>
    [
        .. TooLong(html, @"<h[1-3]\b[^>]*>(?<text>.*?)</h[1-3]>", HeadingWords, "heading"),
        .. TooLong(html, @"<button\b[^>]*>(?<text>.*?)</button>", HeadingWords, "button"),
        .. TooLong(html, @"<a\b[^>]*class=""button\b[^>]*>(?<text>.*?)</a>", HeadingWords, "button"),
        .. TooLong(html, @"<p\b[^>]*class=""remark\b[^>]*>(?<text>.*?)</p>", NoticeWords, "notice"),
        .. TooLong(html, @"<p\b[^>]*>(?<text>.*?)</p>", ParagraphWords, "paragraph"),
    ];

    /// <summary>What is too long of a sentence that the domain says, wherever it is shown; a fact counts as no word.</summary>
    public static IEnumerable<string> FaultsOf(string form)
    {
        if (Words(form) > ParagraphWords) yield return $"paragraph of {Words(form)} words: {form}";
        foreach (var sentence in SentenceEnd().Split(form).Where(s => Words(s) > NoticeWords))
            yield return $"sentence of {Words(sentence)} words: {sentence}";
    }

    private static int Words(string text) => text.Split(' ').Count(w => w.Any(char.IsLetter));

    private static int HeadingWordsOf(string text) => text.Split(' ').Count(w => w.Any(char.IsLetter) && !small.Contains(w));

    [GeneratedRegex(@"(?<=[.?!]) ")]
    private static partial Regex SentenceEnd();

    private static IEnumerable<string> TooLong(string html, string pattern, int most, string what) =>
        from found in VisibleText.Elements(html, pattern)
        let text = found.Text
        let words = most == HeadingWords ? HeadingWordsOf(text) : Words(text)
        where words > most && !longer.Any(l => found.Element.Contains(l.Mark, StringComparison.Ordinal))
        select $"{what} of {words} words: {text}";
}
