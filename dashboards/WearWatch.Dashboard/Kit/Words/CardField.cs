using WearWatch.Chains;
using WearWatch.Plant.Files;

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
    public static IReadOnlyList<(string Heading, IReadOnlyList<CardField> Fields)> Groups { get; } =
    [
        .. ChainColumns.Headings.Select(heading =>
            (heading, (IReadOnlyList<CardField>)[.. all.Where(f => f.Asked.Heading == heading).OrderBy(f => f.IsTick)])),
    ];

    /// <summary>The field of a column.</summary>
    public static CardField? Of(string column) => all.FirstOrDefault(f => f.Column.Name == column);

    /// <summary>What stands in the field, in words and with its unit; a dash for nothing.</summary>
    /// <param name="text">Its text as a file has it.</param>
    public string Said(string text) => (text.Length > 0 ? text : Column.Usual) switch
    {
        var tick when IsTick => tick == "yes" ? "yes" : "no",
        var word when Asked.Choices.FirstOrDefault(c => c.Word == word).Text is { } chosen => chosen,
        "" => Show.Nothing,
        var number when IsNumber && Asked.Unit.Length > 0 => $"{number} {Asked.Unit}",
        var other => other,
    };
}
