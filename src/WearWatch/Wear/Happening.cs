using WearWatch.Chains;
using WearWatch.Gauging;

namespace WearWatch.Wear;

/// <summary>A reading, or an event that bears on the running hours, as one entry of a position's log.</summary>
/// <param name="ReadingIndex">Which of the readings it is, from 0; -1 for an event.</param>
/// <param name="Kind">What kind of event it is; null for a reading.</param>
/// <param name="At">When, if it was told.</param>
/// <param name="Before">What the hour counter showed just before, if it is known.</param>
/// <param name="After">What it showed just after; differs only where the counter was changed.</param>
internal readonly record struct Happening(
    int ReadingIndex, ChainEventKind? Kind, DateTimeOffset? At, double? Before, double? After)
{
    /// <summary>Whether it is the fitting that the chain's card records.</summary>
    public bool OnCard { get; init; }

    /// <summary>The supplier's lot of the chain that was fitted, or empty.</summary>
    public string Lot { get; init; } = "";

    /// <summary>Whether a new chain was fitted.</summary>
    public bool IsFitting => Kind == ChainEventKind.Replacement;

    /// <summary>Whether the hour counter was changed.</summary>
    public bool IsReset => Kind == ChainEventKind.MeterReset;

    public static Happening Of(Reading reading, int index) =>
        new(index, null, reading.TakenAt, reading.Counter?.Hours, reading.Counter?.Hours);

    public static Happening Of(ChainEvent happened)
    {
        var (before, after) = (happened.CounterBefore?.Hours, happened.CounterAfter?.Hours);
        return happened.Kind == ChainEventKind.MeterReset
            ? new(-1, happened.Kind, happened.At, before, after ?? 0)
            : new(-1, happened.Kind, happened.At, before ?? after, after ?? before) { Lot = happened.Lot };
    }

    /// <summary>The fitting that the chain's card records, or null.</summary>
    public static Happening? FittingOf(ChainCard card) => card.FittedCounter is null && card.FittedAt is null
        ? null
        : new(-1, ChainEventKind.Replacement, card.FittedAt, card.FittedCounter?.Hours, card.FittedCounter?.Hours)
        {
            OnCard = true,
            Lot = card.Lot,
        };
}
