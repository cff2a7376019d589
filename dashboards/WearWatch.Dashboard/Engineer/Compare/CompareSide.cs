
using WearWatch.Plant.Books;

namespace WearWatch.Dashboard.Engineer.Compare;

/// <summary>One side of a comparison: the lives of a group, or those fitted in a period, or both.</summary>
/// <param name="Group">The group; empty for every one.</param>
/// <param name="From">Only lives fitted on this day or after; null for any.</param>
/// <param name="To">Only lives fitted before this day; null for any.</param>
public sealed record CompareSide(string Group, DateOnly? From, DateOnly? To)
{
    /// <summary>Every life.</summary>
    public static CompareSide All { get; } = new("", null, null);

    /// <summary>What it is, in words.</summary>
    public string Name
    {
        get
        {
            var period = (From, To) switch
            {
                ({ } from, { } to) => $"fitted {from:yyyy-MM-dd} to {to.AddDays(-1):yyyy-MM-dd}",
                ({ } from, null) => $"fitted from {from:yyyy-MM-dd} on",
                (null, { } to) => $"fitted before {to:yyyy-MM-dd}",
                _ => "",
            };
            return (Group, period) switch
            {
                ("", "") => "all",
                ("", _) => period,
                (_, "") => Group,
                _ => $"{Group}, {period}",
            };
        }
    }

    /// <summary>Whether a life is on this side.</summary>
    public bool Holds(BookedChain chain, BookedLife life, LifeGrouping by, Func<DateTimeOffset, DateOnly> dayOf)
    {
        if (Group.Length > 0 && by.Of(chain.CardOf(life)) != Group) return false;
        if (From is null && To is null) return true;
        return life.FittedAt is { } fitted && dayOf(fitted) is var day && !(day < From) && !(day >= To);
    }
}
