using System.Globalization;

namespace WearWatch.Phrases;

/// <summary>One fact of a phrase.</summary>
/// <param name="Name">What the code calls it; empty for a part of a list.</param>
/// <param name="Value">A number, a date, a text that is data, or another phrase.</param>
/// <param name="Format">How a number or a date is written; null for as it is, a date in the one form of the language.</param>
/// <remarks>Facts are equal when they say the same, whatever the code calls them and keeps them in.</remarks>
public readonly record struct PhraseFact(string Name, object? Value, string? Format)
{
    /// <summary>The fact as it is written in a language.</summary>
    internal string In(Func<string, string> translated, CultureInfo culture) => Value switch
    {
        null => "",
        Phrase phrase => phrase.In(translated, culture),
        DateOnly day when Format is null => DateWords.Day(day, culture),
        DateTimeOffset at when Format is null => DateWords.Day(DateOnly.FromDateTime(at.DateTime), culture),
        DateTime wall when Format is null => DateWords.Moment(wall, culture),
        IFormattable formattable => formattable.ToString(Format, culture),
        var other => other.ToString() ?? "",
    };

    /// <inheritdoc/>
    public bool Equals(PhraseFact other) =>
        Value is Phrase || other.Value is Phrase ? Equals(Value, other.Value) : InEnglish == other.InEnglish;

    /// <inheritdoc/>
    public override int GetHashCode() => InEnglish.GetHashCode(StringComparison.Ordinal);

    internal string InEnglish => In(english => english, CultureInfo.InvariantCulture);
}
