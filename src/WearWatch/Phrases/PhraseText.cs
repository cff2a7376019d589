using System.Text.Json;

namespace WearWatch.Phrases;

/// <summary>A phrase as the text of a column: kept so that it can be read in any language later.</summary>
public static class PhraseText
{
    private static readonly JsonSerializerOptions options = new() { Converters = { new PhraseConverter() } };

    /// <summary>What is kept: JSON (see <see cref="PhraseConverter"/>); empty for nothing to say.</summary>
    public static string Of(Phrase phrase) => phrase.IsEmpty ? "" : JsonSerializer.Serialize(phrase, options);

    /// <summary>The phrase of a kept text.</summary>
    /// <remarks>
    /// A text that was kept as a sentence is taken as a form without facts: one that is still said so is found by its
    /// translation, any other is shown as it was written.
    /// </remarks>
    public static Phrase Read(string kept) => kept.Length == 0 ? Phrase.None
        : kept.StartsWith("{\"form\":", StringComparison.Ordinal) ? JsonSerializer.Deserialize<Phrase>(kept, options)!
        : new(kept.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal), []);
}
