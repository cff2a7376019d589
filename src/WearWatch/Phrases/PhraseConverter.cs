using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace WearWatch.Phrases;

/// <summary>
/// A phrase as JSON: its English form and the facts that fill it, so that whoever reads it back can say it in any language.
/// </summary>
/// <param name="said">
/// Puts the phrase into the reader's language, for an answer that has the <c>sentence</c> beside form and facts; null where it is
/// only kept.
/// </param>
/// <remarks>
/// <c>{"form":"{0} of {1} pitches","facts":[{"name":"left","number":3},{"name":"all","number":120}]}</c>. A fact is a number, a
/// day (ISO 8601), a time (ISO 8601, wall clock), a text or a phrase; <c>format</c> says how a number or a date is written.
/// </remarks>
public sealed class PhraseConverter(Func<Phrase, string>? said = null) : JsonConverter<Phrase>
{
    /// <summary>For the framework, which makes it by its name alone.</summary>
    public PhraseConverter()
        : this(null)
    {
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Phrase value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteString("form", value.Form);
        writer.WriteStartArray("facts");
        foreach (var fact in value.Facts) Write(writer, fact, options);
        writer.WriteEndArray();
        if (said is not null) writer.WriteString("sentence", said(value));
        writer.WriteEndObject();
    }

    /// <inheritdoc/>
    /// <exception cref="JsonException">It is no phrase.</exception>
    public override Phrase Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using var document = JsonDocument.ParseValue(ref reader);
        return PhraseOf(document.RootElement);
    }

    private void Write(Utf8JsonWriter writer, PhraseFact fact, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        if (fact.Name.Length > 0) writer.WriteString("name", fact.Name);
        switch (fact.Value)
        {
            case Phrase phrase:
                writer.WritePropertyName("phrase");
                Write(writer, phrase, options);
                break;
            case DateOnly day:
                writer.WriteString("day", day.ToString("O", CultureInfo.InvariantCulture));
                break;
            case DateTimeOffset at when fact.Format is null:
                writer.WriteString("day", at.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
                break;
            case DateTime wall:
                writer.WriteString("time", wall.ToString("s", CultureInfo.InvariantCulture));
                break;
            case int or long:
                writer.WriteNumber("number", Convert.ToInt64(fact.Value, CultureInfo.InvariantCulture));
                break;
            case double number when double.IsFinite(number):
                writer.WriteNumber("number", number);
                break;
            case decimal number:
                writer.WriteNumber("number", number);
                break;
            default:
                // Already written: its own format does not apply to a text.
                writer.WriteString("text", fact.InEnglish);
                writer.WriteEndObject();
                return;
        }

        if (fact.Format is not null) writer.WriteString("format", fact.Format);
        writer.WriteEndObject();
    }

    private static Phrase PhraseOf(JsonElement json)
    {
        if (json.ValueKind != JsonValueKind.Object || !json.TryGetProperty("form", out var form)
            || !json.TryGetProperty("facts", out var facts)) throw new JsonException("A phrase has a form and facts.");
        return new(form.GetString() ?? "", facts.EnumerateArray().Select(FactOf));
    }

    private static PhraseFact FactOf(JsonElement json) => new(
        json.TryGetProperty("name", out var name) ? name.GetString()! : "",
        json.TryGetProperty("phrase", out var phrase) ? PhraseOf(phrase)
            : json.TryGetProperty("day", out var day) ? DateOnly.Parse(day.GetString()!, CultureInfo.InvariantCulture)
            : json.TryGetProperty("time", out var time) ? DateTime.Parse(time.GetString()!, CultureInfo.InvariantCulture)
            : json.TryGetProperty("number", out var number) ? NumberOf(number)
            : json.GetProperty("text").GetString(),
        json.TryGetProperty("format", out var format) ? format.GetString() : null);

    private static object NumberOf(JsonElement number) => number.TryGetInt64(out var whole) ? whole : number.GetDouble();
}
