using WearWatch.Chains;

namespace WearWatch.Plant.Files;

/// <summary>One column of chains.csv: how it is written from a card, and read into one.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Write">Its text for a card.</param>
/// <param name="Read">The card with what the row says; an empty field takes back what was known.</param>
/// <param name="Always">Whether it is written even when no chain has anything in it.</param>
public sealed record ChainColumn(string Name, Func<ChainCard, string> Write, Func<RowFields, ChainCard, ChainCard> Read, bool Always)
{
    public static ChainColumn Text(string name, Func<ChainCard, string> of, Func<ChainCard, string, ChainCard> with, bool always = true) =>
        new(name, of, (row, card) => with(card, row.Label(name)), always);

    public static ChainColumn Number(
        string name, double least, double most, Func<ChainCard, double?> of, Func<ChainCard, double?, ChainCard> with, bool always = true) =>
        new(name, card => RowFields.Text(of(card)), (row, card) => with(card, row.Number(name, least, most)), always);

    public static ChainColumn Whole(
        string name, int least, int most, Func<ChainCard, int?> of, Func<ChainCard, int?, ChainCard> with, bool always = true) =>
        new(name, card => RowFields.Text(of(card)), (row, card) => with(card, row.Whole(name, least, most)), always);

    public static ChainColumn Word<T>(
        string name, IReadOnlyDictionary<string, T> words, Func<ChainCard, T?> of, Func<ChainCard, T?, ChainCard> with, bool always = true)
        where T : struct, Enum =>
        new(name, card => of(card) is { } word ? FileWords.Of(word) : "", (row, card) => with(card, row.Word(name, words)), always);

    public static ChainColumn Flag(string name, Func<ChainCard, bool> of, Func<ChainCard, bool, ChainCard> with) =>
        new(name, card => of(card) ? "yes" : "", (row, card) => with(card, row.Flag(name)), Always: false);
}
