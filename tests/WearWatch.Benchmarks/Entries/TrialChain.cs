using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Running;

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

    /// <summary>What is known of its hours before a reading of another chain.</summary>
    public CounterClock? ClockAt(Reading other, ProductionCalendar calendar, int index)
    {
        var count = other.TakenAt is { } at ? Readings.TakeWhile(r => r.TakenAt < at).Count() : Math.Min(index, Readings.Count);
        return count < 2 ? null : new(Card, Before(count), EventsBefore(Math.Min(count, Readings.Count - 1)), calendar);
    }
}
