using WearWatch.Learning;
using WearWatch.Plant.Costs;

namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>What a change of one driver would do to a class of chains.</summary>
/// <param name="Groups">The classes to choose from.</param>
/// <param name="IsUsed">Whether the fleet model looks at the driver: else nothing can be said.</param>
/// <param name="Change">The change; null while no class is chosen, or when it would change none of its chains.</param>
/// <param name="Saving">What it is worth; null when no chain of the class was swapped in the year.</param>
/// <param name="Asked">What was asked.</param>
public sealed record ClassChangeView(
    IReadOnlyList<string> Groups, bool IsUsed, ClassChange? Change, ClassSaving? Saving, ClassQuestion Asked)
{
    /// <summary>What would halve the wear, in a sentence.</summary>
    public Phrase Halving => (Change, Asked.IsQuantity) switch
    {
        (null, _) => Phrase.None,
        ({ IsSeen: false }, _) => $"The fleet shows no effect that differs from none: nothing can be said of halving.",
        ({ Rate.LifeFactor: >= 2 }, _) => $"This change halves the wear.",
        ({ HalvesAtPercent: { } at } c, true) when at >= c.ShownToPercent => $"At {at:0} % of today's value the wear is halved.",
        ({ HalvesAtPercent: { } at, ShownToPercent: { } shown }, true) =>
            $"At {at:0} % the wear would be halved, but the fleet shows it down to {shown:0} % only: beyond that it is a guess.",
        (_, true) => $"No value of it halves the wear: its effect is too small.",
        _ => $"This change does not halve the wear.",
    };

    /// <summary>When it has paid for itself, in a sentence.</summary>
    public Phrase Payback => Saving switch
    {
        null => Phrase.None,
        _ when Asked.Once + Asked.EachYear <= 0 => $"Enter what it costs to see when it pays back.",
        { Years: double.PositiveInfinity } => $"It never pays back: it costs more each year than it saves.",
        { YearsBetween: { Worst: double.PositiveInfinity } ends } s =>
            $"{s.Years:0.0} years; {ends.Best:0.0} at best, and it may never pay back.",
        { YearsBetween: var ends } s => $"{s.Years:0.0} years ({ends.Best:0.0} to {ends.Worst:0.0})",
    };

    /// <summary>A driver and what is done with it, in words.</summary>
    public static Phrase Of(ClassDriver driver) => driver switch
    {
        ClassDriver.Load => $"load",
        ClassDriver.Speed => $"speed",
        ClassDriver.OilInterval => $"lubrication interval",
        ClassDriver.Lubricator => $"lubrication: automatic",
        _ => $"dust: enclosed, none",
    };
}
