using System.Diagnostics;
using Microsoft.AspNetCore.WebUtilities;
using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Dashboard.Engineer;

/// <summary>The groups' names.</summary>
public static class LifeGroupings
{
    /// <summary>What a person picks from.</summary>
    public static Phrase Title(LifeGrouping grouping) => grouping switch
    {
        LifeGrouping.All => $"all chains together",
        LifeGrouping.Type => $"chain type",
        LifeGrouping.Line => $"line",
        LifeGrouping.Lubrication => $"lubrication",
        LifeGrouping.Dust => $"dust",
        LifeGrouping.Load => $"relative load",
        LifeGrouping.Family => $"kind of chain",
        LifeGrouping.Lot => $"supplier's lot",
        _ => throw new UnreachableException($"Grouping {grouping} has no title."),
    };

    /// <summary>The grouping that a query string names, as <c>?by=line</c>.</summary>
    public static LifeGrouping FromQuery(string query, LifeGrouping usual) =>
        Enum.TryParse<LifeGrouping>(QueryHelpers.ParseQuery(query).GetValueOrDefault("by"), ignoreCase: true, out var by)
            && Enum.IsDefined(by) ? by : usual;

    /// <summary>The group that a chain belongs to.</summary>
    public static string Of(this LifeGrouping grouping, ChainCard card) => GroupOf(grouping, card).ToString();

    /// <summary>How a group is called on screens: data as they are, all else in the person's language.</summary>
    public static string Said(string group) => Named.TryGetValue(group, out var phrase) ? T[phrase] : group;

    private static readonly Phrase All = $"all chains", NotRecorded = $"not recorded", NoLine = $"no line recorded",
        NoLot = $"no lot recorded";

    private static readonly Dictionary<string, Phrase> Named = new Phrase[]
        {
            All, NotRecorded, NoLine, NoLot, LoadBand(0.3), LoadBand(0.5), LoadBand(0.8), LoadBand(1),
        }
        .Concat(Enum.GetValues<LubricationState>().Select(s => Phrase.Of($"{DutyWords.Of(s)}")))
        .Concat(Enum.GetValues<DustLevel>().Select(d => Phrase.Of($"{DutyWords.Of(d)}")))
        .Concat(ChainFamily.All.Select(f => Phrase.Of($"{f.Words}")))
        .DistinctBy(p => p.ToString()).ToDictionary(p => p.ToString());

    private static Phrase GroupOf(LifeGrouping grouping, ChainCard card) => grouping switch
    {
        LifeGrouping.All => All,
        LifeGrouping.Type => card.ChainType.Length > 0 ? Phrase.Verbatim(card.ChainType) : $"pitch {card.PitchMm:0.##} mm",
        LifeGrouping.Line => card.Line.Length > 0 ? Phrase.Verbatim(card.Line) : NoLine,
        LifeGrouping.Lubrication => card.Duty.Lubrication is { } state ? Phrase.Of($"{DutyWords.Of(state)}") : NotRecorded,
        LifeGrouping.Dust => card.Duty.Dust is { } dust ? Phrase.Of($"{DutyWords.Of(dust)}") : NotRecorded,
        LifeGrouping.Load => LoadBand(card.Duty.RelativeLoad),
        LifeGrouping.Family => $"{card.Family.Words}",
        LifeGrouping.Lot => card.Lot.Length > 0 ? Phrase.Verbatim(card.Lot) : NoLot,
        _ => throw new UnreachableException($"Grouping {grouping} has no groups."),
    };

    private static Phrase LoadBand(double? relativeLoad) => relativeLoad switch
    {
        null => NotRecorded,
        < 0.4 => $"below {0.4:0.0}",
        < 0.7 => $"{0.4:0.0} to {0.7:0.0}",
        < 1 => $"{0.7:0.0} to {1}",
        _ => $"{1} and above",
    };
}
