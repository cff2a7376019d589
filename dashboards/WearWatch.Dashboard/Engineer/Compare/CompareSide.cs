namespace WearWatch.Dashboard.Engineer.Compare;

/// <summary>One side of a comparison: the lives of a group, or those fitted in a period, or both.</summary>
/// <param name="Group">The group; empty for every one.</param>
/// <param name="From">Only lives fitted on this day or after; null for any.</param>
/// <param name="To">Only lives fitted before this day; null for any.</param>
public sealed record CompareSide(string Group, DateOnly? From, DateOnly? To)
{
    /// <summary>Stands for a group: every one but the other side's.</summary>
    public const string Others = "*others";

    /// <summary>Every life.</summary>
    public static CompareSide All { get; } = new("", null, null);

    /// <summary>What it is, in words.</summary>
    public Phrase Said
    {
        get
        {
            Phrase period = (From, To) switch
            {
                ({ } from, { } to) => Phrase.Of($"fitted {from:yyyy-MM-dd} to {to.AddDays(-1):yyyy-MM-dd}"),
                ({ } from, null) => $"fitted from {from:yyyy-MM-dd} on",
                (null, { } to) => $"fitted before {to:yyyy-MM-dd}",
                _ => Phrase.None,
            };
            var group = Group == Others ? Phrase.Of($"all others") : Phrase.Verbatim(LifeGroupings.Said(Group));
            return (Group.Length > 0, period.IsEmpty) switch
            {
                (false, true) => $"all",
                (false, _) => period,
                (_, true) => group,
                _ => $"{group}, {period}",
            };
        }
    }

    /// <summary>Whether what belongs to a group, and was fitted then, is on this side.</summary>
    /// <param name="group">The group to which it belongs.</param>
    /// <param name="other">The other side, whose group is none of all others.</param>
    /// <param name="fitted">The day on which it was fitted; null for not known.</param>
    public bool Holds(string group, CompareSide other, DateOnly? fitted)
    {
        if (Group == Others ? group == other.Group : Group.Length > 0 && group != Group) return false;
        if (From is null && To is null) return true;
        return fitted is { } day && !(day < From) && !(day >= To);
    }
}
