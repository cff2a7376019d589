using System.Text.RegularExpressions;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>Words that the crew does not use, by the column banned_on_screens of docs/glossary.csv.</summary>
internal static class PlainWords
{
    private static readonly Regex banned = new(
        @"(?<!load )(?<![\w.@/#-])("
        + string.Join('|', Glossary.All.SelectMany(g => g.Banned).OrderByDescending(w => w.Length).Select(Regex.Escape))
        + @")(?![\w-])",
        RegexOptions.IgnoreCase);

    /// <summary>Those that stand in a text, each with what is around it.</summary>
    public static IEnumerable<string> Banned(string text) =>
        from Match found in banned.Matches(text)
        let start = Math.Max(0, found.Index - 40)
        select $"'{found.Value}' in: "
            + text[start..Math.Min(text.Length, found.Index + found.Length + 40)].ReplaceLineEndings(" ");
}
