using System.Globalization;
using System.Text.RegularExpressions;
using WearWatch.Phrases;

namespace WearWatch.Criteria;

/// <summary>Reads a text of criteria.csv as a phrase, so that it is said in the reader's language.</summary>
internal static partial class CriterionText
{
    /// <summary>What stands in braces is a fact: a number is written as the language does, a size such as 1/4 in stays.</summary>
    public static Phrase Read(string cell)
    {
        var facts = Braced().Matches(cell).Select(match => FactOf(match.Groups[1].Value)).ToList();
        var hole = 0;
        return new(Braced().Replace(cell, _ => $"{{{hole++}}}"), facts);
    }

    private static PhraseFact FactOf(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? new("figure", number, "0." + new string('0', text.Length - 1 - text.IndexOf('.', StringComparison.Ordinal)))
            : new("size", text, null);

    [GeneratedRegex(@"\{([^{}]+)\}")]
    private static partial Regex Braced();
}
