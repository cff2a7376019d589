using System.Text.Json.Serialization;
using WearWatch.Chains;

namespace WearWatch.Learning;

/// <summary>What some chains have in common beyond their duty: the line they run on, the lot they came from.</summary>
/// <remarks>
/// One of many, each with few chains: no ordinary one among them, and each effect is held back towards none by how much they
/// differ at all (a random effect). Those with the most chains come in when there are more than <see cref="MostMembers"/>.
/// </remarks>
/// <param name="What">What it is, in words: <c>line</c> or <c>lot</c>.</param>
/// <param name="Members">Names of those with at least two chains, in ordinal order.</param>
internal sealed record CommonOrigin(string What, IReadOnlyList<string> Members)
{
    /// <summary>A production line.</summary>
    public const string Line = "line";

    /// <summary>A supplier's lot.</summary>
    public const string Lot = "lot";

    /// <summary>More than so many columns would make the nightly training long, and tell no more.</summary>
    public const int MostMembers = 200;

    private const int FewestChains = 2;

    private static readonly (string What, Func<ChainCard, string> Of)[] Kinds =
        [(Line, card => card.Line), (Lot, card => card.Lot)];

    private readonly Func<ChainCard, string> nameOf = Kinds.Single(kind => kind.What == What).Of;

    private readonly Dictionary<string, int> places = Members.Select((name, place) => (name, place))
        .ToDictionary(m => m.name, m => m.place);

    /// <summary>Number of columns: one for each.</summary>
    [JsonIgnore]
    public int Width => Members.Count;

    /// <summary>Names of the columns.</summary>
    [JsonIgnore]
    public IEnumerable<string> ColumnNames => Members.Select(name => $"{What} {name}");

    /// <summary>What a fleet shows of origins; those of which it has fewer than two are left out.</summary>
    public static IEnumerable<CommonOrigin> In(IReadOnlyList<ChainCard> cards) =>
        from kind in Kinds
        let members = cards.Select(kind.Of).Where(name => name.Length > 0).CountBy(name => name)
            .Where(m => m.Value >= FewestChains)
            .OrderByDescending(m => m.Value).ThenBy(m => m.Key, StringComparer.Ordinal).Take(MostMembers)
            .Select(m => m.Key).Order(StringComparer.Ordinal).ToList()
        where members.Count > 1
        select new CommonOrigin(kind.What, members);

    /// <summary>Which of its columns a card belongs to; -1 for none.</summary>
    public int PlaceOf(ChainCard card) => places.GetValueOrDefault(nameOf(card), -1);
}
