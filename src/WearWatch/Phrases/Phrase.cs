using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json.Serialization;

namespace WearWatch.Phrases;

/// <summary>
/// What is to be said, before it is put into a language: a form such as "{0} of {1} pitches" and the facts that fill it.
/// </summary>
/// <remarks>
/// Written as an interpolated string wherever a phrase is expected: <c>Phrase why = $"{left:0.0} mm of take-up left";</c>. The
/// compiler takes the string apart, so nothing is put into words before somebody reads it. Phrases are equal when they say the
/// same in every language. A text that is data (a name, a note) is a fact, never a form; see <see
/// cref="Verbatim"/>.
/// </remarks>
[InterpolatedStringHandler]
[JsonConverter(typeof(PhraseConverter))]
public sealed class Phrase : IEquatable<Phrase>
{
    private readonly StringBuilder form = new();
    private readonly List<PhraseFact> facts;

    /// <summary>Called by the compiler for an interpolated string.</summary>
    /// <param name="literalLength">Characters outside of the holes.</param>
    /// <param name="formattedCount">Holes.</param>
    public Phrase(int literalLength, int formattedCount) => facts = new List<PhraseFact>(formattedCount);

    /// <summary>A phrase read back from where it was kept.</summary>
    public Phrase(string form, IEnumerable<PhraseFact> facts)
    {
        this.form.Append(form);
        this.facts = [.. facts];
    }

    /// <summary>Nothing to say.</summary>
    public static Phrase None { get; } = new("", []);

    /// <summary>The English form, with a hole for each fact: the key of its translations.</summary>
    public string Form => form.ToString();

    /// <summary>What fills the holes, in order; a fact can be a phrase itself.</summary>
    public IReadOnlyList<PhraseFact> Facts => facts;

    /// <summary>Whether there is nothing to say.</summary>
    public bool IsEmpty => form.Length == 0;

    /// <summary>The phrase itself; tells the compiler in both arms of a condition that a phrase is meant.</summary>
    public static Phrase Of(Phrase phrase) => phrase;

    /// <summary>A text that is the same in every language: a name, a note, a chain's designation.</summary>
    public static Phrase Verbatim(string text) => text.Length == 0 ? None : new("{0}", [new PhraseFact("text", text, null)]);

    /// <summary>One form for a single thing, another for none or several.</summary>
    public static Phrase Counted(int count, Phrase one, Phrase several) => count == 1 ? one : several;

    /// <summary>Several phrases one after another, with a separator that needs no translation.</summary>
    public static Phrase Join(string separator, IEnumerable<Phrase> phrases)
    {
        var said = phrases.Where(p => !p.IsEmpty).ToArray();
        return said.Length switch
        {
            0 => None,
            1 => said[0],
            _ => new(
                string.Join(separator, Enumerable.Range(0, said.Length).Select(i =>
                    "{" + i.ToString(CultureInfo.InvariantCulture) + "}")),
                said.Select(p => new PhraseFact("", p, null))),
        };
    }

    /// <summary>Whether two phrases say the same.</summary>
    public static bool operator ==(Phrase? one, Phrase? other) => Equals(one, other);

    /// <summary>Whether two phrases say different things.</summary>
    public static bool operator !=(Phrase? one, Phrase? other) => !Equals(one, other);

    /// <summary>Called by the compiler for what stands between the holes.</summary>
    public void AppendLiteral(string text) =>
        form.Append(text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal));

    /// <summary>Called by the compiler for a hole.</summary>
    /// <param name="value">The fact: a number, a date, a text that is data, or another phrase.</param>
    /// <param name="format">How a number or a date is written.</param>
    /// <param name="name">What the code calls it.</param>
    public void AppendFormatted<T>(T value, string? format = null, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        form.Append('{').Append(facts.Count.ToString(CultureInfo.InvariantCulture)).Append('}');
        facts.Add(new PhraseFact(name, value, format));
    }

    /// <summary>The phrase in a language.</summary>
    /// <param name="translated">The form in that language, from the English form.</param>
    /// <param name="culture">How numbers and dates are written there.</param>
    public string In(Func<string, string> translated, CultureInfo culture) => IsEmpty
        ? ""
        : string.Format(culture, translated(Form), [.. facts.Select(f => f.In(translated, culture))]);

    /// <summary>The phrase in English, with a decimal point: for the command line, logs and files.</summary>
    public override string ToString() => In(english => english, CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public bool Equals(Phrase? other) => other is not null && form.Equals(other.form) && facts.SequenceEqual(other.facts);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Phrase);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Form, ToString());
}
