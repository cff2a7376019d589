using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Entries;

/// <summary>A chain of a trial, as it was known before each of its readings.</summary>
public sealed class TrialChain
{
    private readonly IReadOnlyList<ChainEvent> events;

    public TrialChain(ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, bool dated)
    {
        this.events = events;
        IsDated = dated;
        Card = dated ? card : card with { FittedAt = null };
        Readings = dated ? readings : [.. readings.Select(r => r with { TakenAt = null })];
    }

    public ChainCard Card { get; }

    public IReadOnlyList<Reading> Readings { get; }

    public bool IsDated { get; }

    /// <summary>Whether the order of its events can be told at each reading: by dates, or because there are none.</summary>
    public bool IsPlain => IsDated || events.All(e => e.Kind is not (ChainEventKind.Replacement or ChainEventKind.MeterReset));

    public IReadOnlyList<Reading> Before(int index) => [.. Readings.Take(index)];

    public IReadOnlyList<ChainEvent> EventsBefore(int index) =>
        [.. events.Where(e => !IsDated || e.At is null || Readings[index].TakenAt is not { } at || e.At <= at)];

    /// <summary>What happened between a reading and the one before it.</summary>
    public IEnumerable<ChainEvent> EventsBetween(int index) => EventsBefore(index).Except(EventsBefore(index - 1));

    /// <summary>As it was known before one of its readings.</summary>
    public KnownChain At(int index, ProductionCalendar calendar) =>
        new(Card, Before(index), EventsBefore(Math.Min(index, Readings.Count - 1)), WearPrior.Broad, calendar);

    /// <summary>As it is known where one of its readings stands amid others in a file.</summary>
    public KnownChain Amid(int index, ProductionCalendar calendar) => At(index, calendar) with
    {
        After = [.. Readings.Skip(index + 1).Take(KnownChain.ReadingsAfter)],
        Events = EventsBefore(Math.Min(index + KnownChain.ReadingsAfter, Readings.Count - 1)),
    };

    /// <summary>As it was known before a reading of another chain; null where nothing was.</summary>
    public KnownChain? At(Reading other, ProductionCalendar calendar, int index)
    {
        var count = other.TakenAt is { } at ? Readings.TakeWhile(r => r.TakenAt < at).Count() : Math.Min(index, Readings.Count);
        return count < 2 ? null : At(count, calendar);
    }
}
