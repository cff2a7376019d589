namespace WearWatch.Plant.Files;

/// <summary>One column of a file: what it holds of a thing, and how it is read back; histories follow from it.</summary>
/// <typeparam name="T">What a row of the file is: a card, a reading, an event.</typeparam>
/// <param name="Name">Its name, with its unit.</param>
/// <param name="Kind">What stands in it.</param>
/// <param name="Value">Its value in a thing; null for not known.</param>
/// <param name="Read">The thing with what the row says; an empty field takes back what was known.</param>
public sealed record FileColumn<T>(string Name, ColumnKind Kind, Func<T, object?> Value, Func<RowFields, T, T> Read)
{
    /// <summary>Whether it is written even when nothing stands in it.</summary>
    public bool Always { get; init; } = true;

    /// <summary>What it means, for whoever reads a table.</summary>
    public string Meaning { get; init; } = "";

    /// <summary>What to write there, where it must not be left empty; null where it may.</summary>
    public Phrase? Needed { get; init; }

    /// <summary>Its text for what is usual, which a file leaves out; empty where nothing is.</summary>
    public string Usual { get; init; } = "";

    /// <summary>Whether it is written even for what is usual; older records left it out all the same.</summary>
    public bool TellsUsual { get; init; }

    /// <summary>Whether its text is whole numbers with blanks between; programs get them one by one.</summary>
    public bool IsList { get; init; }

    /// <summary>How a person is asked for it; null where a form of its own asks.</summary>
    public AskedField? Asked { get; init; }

    /// <summary>Its text for a thing as a file has it; empty for not known and for what is usual.</summary>
    public string Write(T thing) => RowFields.TextOf(Value(thing)) is var text && text == Usual && !TellsUsual ? "" : text;

#pragma warning disable CA1000 // a list of columns names the type once, by an alias
    /// <summary>A text of at most so many letters.</summary>
    public static FileColumn<T> Text(
        string name, Func<T, string> of, Func<T, string, T> with, bool always = true, int longest = RowFields.LongestText) =>
        new(name, ColumnKind.Text, of, (row, thing) => with(thing, row.Label(name, longest)))
        {
            Always = always,
        };

    /// <summary>A number between two bounds.</summary>
    public static FileColumn<T> Number(
        string name, double least, double most, Func<T, double?> of, Func<T, double?, T> with, bool always = true) =>
        new(name, ColumnKind.Number, thing => of(thing), (row, thing) => with(thing, row.Number(name, least, most)))
        {
            Always = always,
        };

    /// <summary>A whole number between two bounds.</summary>
    public static FileColumn<T> Whole(
        string name, int least, int most, Func<T, int?> of, Func<T, int?, T> with, bool always = true) =>
        new(name, ColumnKind.Whole, thing => (long?)of(thing), (row, thing) => with(thing, row.Whole(name, least, most)))
        {
            Always = always,
        };

    /// <summary>A moment, with its offset from UTC.</summary>
    public static FileColumn<T> Moment(string name, Func<T, DateTimeOffset?> of, Func<T, DateTimeOffset?, T> with) =>
        new(name, ColumnKind.Moment, thing => of(thing), (row, thing) => with(thing, row.Moment(name)));

    /// <summary>One of some words.</summary>
    public static FileColumn<T> Word<TWord>(
        string name, IReadOnlyDictionary<string, TWord> words, Func<T, TWord?> of, Func<T, TWord?, T> with, bool always = true)
        where TWord : struct, Enum =>
        new(
            name, ColumnKind.Text, thing => of(thing) is { } word ? FileWords.Of(word) : null,
            (row, thing) => with(thing, row.Word(name, words)))
        {
            Always = always,
        };

    /// <summary>Yes, or nothing for no.</summary>
    public static FileColumn<T> Flag(string name, Func<T, bool> of, Func<T, bool, T> with) =>
        new(name, ColumnKind.YesNo, thing => of(thing), (row, thing) => with(thing, row.Flag(name))) { Always = false };
}
