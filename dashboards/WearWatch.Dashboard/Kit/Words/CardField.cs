using WearWatch.Chains;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Kit.Words;

/// <summary>A field of the card as a person reads it.</summary>
/// <param name="Column">Its column of chains.csv.</param>
/// <param name="Asked">How a form asks for it.</param>
public sealed record CardField(FileColumn<ChainCard> Column, AskedField Asked)
{
    private static readonly IReadOnlyList<CardField> all =
        [.. ChainColumns.Fields.Prepend(ChainColumns.Name).Select(c => new CardField(c, c.Asked!))];

    /// <summary>Whether it is a box to tick.</summary>
    public bool IsTick => Column.Kind == ColumnKind.YesNo;

    /// <summary>Whether a number is written into it.</summary>
    public bool IsNumber => Column.Kind is ColumnKind.Number or ColumnKind.Whole;

    /// <summary>The card's fields by heading, boxes to tick last.</summary>
    public static IReadOnlyList<(Phrase Heading, IReadOnlyList<CardField> Fields)> Groups { get; } =
    [
        .. ChainColumns.Headings.Select(heading =>
            (heading, (IReadOnlyList<CardField>)[.. all.Where(f => f.Asked.Heading == heading).OrderBy(f => f.IsTick)])),
    ];

    /// <summary>The field of a column.</summary>
    public static CardField? Of(string column) => all.FirstOrDefault(f => f.Column.Name == column);

    /// <summary>
    /// What a page tells of a chain beside where it runs: what is told of it, and of what every card has also that it is not.
    /// </summary>
    public static IEnumerable<CardField> Shown(ChainCard card) =>
        all.Where(f => f.Asked.Heading != ChainColumns.WhereItRuns && (f.Column.Always || f.Column.Write(card).Length > 0));

    /// <summary>What a chain has in the field, in words and a person's own units; a dash for nothing.</summary>
    public string Of(ChainCard card, UnitPreference units, PlantTime time) => (Column.Value(card), Asked.Unit?.Form) switch
    {
        (double mm, "mm") => units.OfLength(mm),
        (double speed, "m/s") => units.OfSpeed(speed),
        (double celsius, "°C") => units.OfTemperature(celsius),
        (double hours, "h") => Show.Hours(hours),
        (DateTimeOffset at, _) => time.Day(at),
        _ => Said(Column.Write(card)),
    };

    /// <summary>What stands in the field, in words and with its unit; a dash for nothing.</summary>
    /// <param name="text">Its text as a file has it.</param>
    public string Said(string text) => (text.Length > 0 ? text : Column.Usual) switch
    {
        var tick when IsTick => tick == "yes" ? T["yes"] : T["no"],
        var word when Asked.Choices.FirstOrDefault(c => c.Word == word).Text is { } chosen => T[chosen],
        "" => Show.Nothing,
        var number when IsNumber && Asked.Unit is { } unit => $"{Show.Written(number)} {T[unit]}",
        var number when IsNumber => Show.Written(number),
        var other => other,
    };
}
