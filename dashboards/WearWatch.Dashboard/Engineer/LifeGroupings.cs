using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;
using WearWatch.Chains;

namespace WearWatch.Dashboard.Engineer;

/// <summary>The groups' names.</summary>
public static class LifeGroupings
{
    /// <summary>What a person picks from.</summary>
    public static string Title(LifeGrouping grouping) => grouping switch
    {
        LifeGrouping.All => "all chains together",
        LifeGrouping.Type => "chain type",
        LifeGrouping.Line => "line",
        LifeGrouping.Lubrication => "lubrication",
        LifeGrouping.Dust => "dust",
        LifeGrouping.Load => "relative load",
        LifeGrouping.Family => "kind of chain",
        LifeGrouping.Lot => "supplier's lot",
        _ => throw new UnreachableException($"Grouping {grouping} has no title."),
    };

    /// <summary>The grouping that a query string names, as <c>?by=line</c>.</summary>
    public static LifeGrouping FromQuery(string query, LifeGrouping usual) =>
        Enum.TryParse<LifeGrouping>(QueryHelpers.ParseQuery(query).GetValueOrDefault("by"), ignoreCase: true, out var by)
            && Enum.IsDefined(by) ? by : usual;

    /// <summary>The group that a chain belongs to.</summary>
    public static string Of(this LifeGrouping grouping, ChainCard card) => grouping switch
    {
        LifeGrouping.All => "all chains",
        LifeGrouping.Type => card.ChainType.Length > 0
            ? card.ChainType
            : string.Create(CultureInfo.InvariantCulture, $"pitch {card.PitchMm:0.##} mm"),
        LifeGrouping.Line => card.Line.Length > 0 ? card.Line : "no line recorded",
        LifeGrouping.Lubrication => card.Duty.Lubrication is { } state ? DutyWords.Of(state) : "not recorded",
        LifeGrouping.Dust => card.Duty.Dust is { } dust ? DutyWords.Of(dust) : "not recorded",
        LifeGrouping.Load => LoadBand(card.Duty.RelativeLoad),
        LifeGrouping.Family => card.Family.Words,
        LifeGrouping.Lot => card.Lot.Length > 0 ? card.Lot : "no lot recorded",
        _ => throw new UnreachableException($"Grouping {grouping} has no groups."),
    };

    private static string LoadBand(double? relativeLoad) => relativeLoad switch
    {
        null => "not recorded",
        < 0.4 => "below 0.4",
        < 0.7 => "0.4 to 0.7",
        < 1 => "0.7 to 1",
        _ => "1 and above",
    };
}
