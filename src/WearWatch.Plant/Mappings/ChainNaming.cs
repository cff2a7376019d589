using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Mappings;

/// <summary>Which chain a signal is of: a fixed one, or by the words that its topic was captured with.</summary>
/// <param name="Template">The name, with captures in braces.</param>
/// <param name="Words">Where the name so made is looked up; empty where it is the chain's own.</param>
internal sealed record ChainNaming(string Template, IReadOnlyList<ChainWord> Words)
{
    /// <summary>What is wrong with it beside these captures; nothing to say when it is sound.</summary>
    public Phrase Fault(IReadOnlyList<string> captures)
    {
        if (Template.Trim().Length == 0) return $"Name the chain, or a capture that names it.";
        var rest = captures.Aggregate(Template, (text, capture) => text.Replace($"{{{capture}}}", "", StringComparison.Ordinal));
        return rest.AsSpan().IndexOfAny("{}") < 0 ? Phrase.None
            : captures.Count == 0 ? Phrase.Of($"The topic captures nothing that '{Template}' could name.")
            : Phrase.Of($"'{Template}' names a capture that the topic lacks; it has {string.Join(", ", captures)}.");
    }

    /// <summary>The chain's name.</summary>
    /// <returns>Null where the table does not know the word.</returns>
    public string? Of(IReadOnlyDictionary<string, string> captured)
    {
        var word = WordOf(captured);
        return Words.Count == 0 ? word : Words.FirstOrDefault(w => w.Word == word)?.Chain;
    }

    /// <summary>The word that is looked up, or is the name.</summary>
    public string WordOf(IReadOnlyDictionary<string, string> captured) => captured.Aggregate(
        Template, (text, word) => text.Replace($"{{{word.Key}}}", word.Value, StringComparison.Ordinal));
}
