using System.Globalization;
using System.Text;
using System.Text.Json;

namespace WearWatch.Plant.JsonPaths;

/// <summary>Reads the smallest parts of a query one after the other and remembers the first thing that is wrong.</summary>
internal class PathCursor(string text)
{
    /// <summary>The largest whole number that JSON carries everywhere (RFC 7493).</summary>
    private const long Largest = (1L << 53) - 1;

    private int at;

    /// <summary>What is wrong; null while nothing is.</summary>
    public Phrase? Fault { get; private set; }

    protected bool IsAtEnd => at >= text.Length;

    protected char Next => IsAtEnd ? '\0' : text[at];

    protected void Fail(Phrase wanted) => Fault ??= $"Character {at + 1}: {wanted}";

    protected void Blanks()
    {
        while (Next is ' ' or '\t' or '\n' or '\r') at++;
    }

    protected bool Take(string sign)
    {
        if (Fault is not null || !text.AsSpan(at).StartsWith(sign, StringComparison.Ordinal)) return false;
        at += sign.Length;
        return true;
    }

    protected void Want(string sign)
    {
        if (!Take(sign)) Fail($"{Phrase.Verbatim(sign)} is missing.");
    }

    /// <summary>Whether one of these comes next, past blanks; they stay unread where none does.</summary>
    protected bool Follows(params ReadOnlySpan<string> signs)
    {
        var back = at;
        Blanks();
        foreach (var sign in signs)
            if (!IsAtEnd && text.AsSpan(at).StartsWith(sign, StringComparison.Ordinal)) return true;
        at = back;
        return false;
    }

    /// <summary>A name without quotes.</summary>
    protected string Name()
    {
        var from = at;
        while (Next is '_' or >= '\u0080' || char.IsAsciiLetter(Next) || (at > from && char.IsAsciiDigit(Next))) at++;
        if (at == from) Fail($"a name is missing; others than letters, digits and _ stand in ['...'].");
        return text[from..at];
    }

    /// <summary>The name of a function: small letters.</summary>
    protected string Function()
    {
        var from = at;
        while (char.IsAsciiLetterLower(Next) || (at > from && (Next == '_' || char.IsAsciiDigit(Next)))) at++;
        return text[from..at];
    }

    protected bool IsIndex => Next == '-' || char.IsAsciiDigit(Next);

    /// <summary>A whole number, without needless zeros.</summary>
    protected long Index()
    {
        var from = at;
        if (Next == '-') at++;
        while (char.IsAsciiDigit(Next)) at++;
        var digits = text.AsSpan(from, at - from);
        if (!long.TryParse(digits, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var whole)
            || Math.Abs(whole) > Largest || !digits.SequenceEqual(whole.ToString(CultureInfo.InvariantCulture)))
            Fail($"a whole number is missing.");
        return whole;
    }

    /// <summary>A number of JSON.</summary>
    protected JsonElement Number()
    {
        var from = at;
        while (char.IsAsciiDigit(Next) || Next is '-' or '+' or '.' or 'e' or 'E') at++;
        return Parsed(text[from..at], $"a number is missing.");
    }

    /// <summary>A text in single or double quotes.</summary>
    protected string Quoted()
    {
        var quote = Next;
        var json = new StringBuilder("\"");
        for (at++; Fault is null && Next != quote; at++)
        {
            if (IsAtEnd) Fail($"the closing quote is missing.");
            else if (Next == '"') json.Append("\\\"");
            else if (Next != '\\') json.Append(Next);
            else if (++at < text.Length && text[at] == quote) json.Append(quote == '"' ? "\\\"" : "'");
            else if (Next is '"' or '\'') Fail($"this quote needs no backslash.");
            else json.Append('\\').Append(Next);
        }

        at++;
        return Fault is null ? Parsed(json.Append('"').ToString(), $"this text is not written as in JSON.") is
        { ValueKind: JsonValueKind.String } value ? value.GetString()! : "" : "";
    }

    private JsonElement Parsed(string json, Phrase wanted)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            var value = document.RootElement.Clone();
            if (value.ValueKind == JsonValueKind.String) _ = value.GetString(); // half of a pair of surrogates is no text
            return value;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            Fail(wanted);
            return default;
        }
    }
}
