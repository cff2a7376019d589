using System.Text.Json;
using System.Text.Json.Serialization;

namespace WearWatch.Phrases;

/// <summary>A phrase as the sentence that it says, for answers whose readers want no more than the words.</summary>
/// <param name="said">Puts the phrase into the reader's language.</param>
public sealed class SentenceConverter(Func<Phrase, string> said) : JsonConverter<Phrase>
{
    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Phrase value, JsonSerializerOptions options) =>
        writer.WriteStringValue(said(value));

    /// <inheritdoc/>
    public override Phrase Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        PhraseText.Read(reader.GetString() ?? "");
}
