using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Plant.Intake;

/// <summary>What is known of a chain when its next reading is judged.</summary>
/// <param name="card">The chain.</param>
/// <param name="eventsBefore">Its events so far.</param>
/// <param name="lastCounterH">The hour counter at its last reading.</param>
/// <param name="lastTakenAt">The time of its last reading.</param>
public sealed class ChainSoFar(
    ChainCard card, IReadOnlyCollection<ChainEvent> eventsBefore, double? lastCounterH = null, DateTimeOffset? lastTakenAt = null)
{
    /// <summary>Counters are read and rounded by people.</summary>
    private const double CounterRoundingH = 1;

    /// <summary>So many readings tell how a counter goes.</summary>
    private const int ReadingsThatTell = 60;

    /// <summary>A counter that the hours explain better than this needs no word of its length.</summary>
    private const double WorthTheTrack = 0.9;

    private readonly List<ChainEvent> events = [.. eventsBefore.Where(MovesHours)];
    private readonly List<ChainEvent> takenAsSetBack = [];
    private readonly List<Reading> readings = [];
    private readonly CounterPace pace = new();

    /// <summary>The readings before, as far as they were told to it; the newest of them are kept.</summary>
    public IReadOnlyList<Reading> Readings
    {
        get => readings;
        init
        {
            readings.AddRange(value.TakeLast(ReadingsThatTell));
            foreach (var reading in readings) pace.Add(reading);
        }
    }

    /// <summary>When its position really ran.</summary>
    public RunningLog Ran { get; init; } = RunningLog.Empty;

    /// <summary>Its card.</summary>
    public ChainCard Card => card;

    /// <summary>The hour counter at its last reading; null when it has none with a counter.</summary>
    public double? LastCounterH { get; private set; } = lastCounterH;

    /// <summary>The time of its last reading; null when it has none with a time.</summary>
    public DateTimeOffset? LastTakenAt { get; private set; } = lastTakenAt;

    /// <summary>
    /// Whether a replacement is recorded: then readings from before the present fitting belong to an earlier chain.
    /// </summary>
    public bool WasReplaced => events.Any(e => e.Kind == ChainEventKind.Replacement);

    /// <summary>Whether a recorded change of the counter explains that it fell.</summary>
    public bool IsFallRecorded(double fromH, double toH) => events.Any(e =>
        e.Kind is ChainEventKind.MeterReset or ChainEventKind.Replacement
        && (e.CounterAfter?.Hours ?? 0) <= toH + CounterRoundingH
        && (e.CounterBefore is not { } before
            || (before.Hours >= fromH - CounterRoundingH && before.Hours > (e.CounterAfter?.Hours ?? 0))));

    /// <summary>
    /// The question about a row's counter or date; null when the hours that can have passed explain it, or nothing can be said.
    /// </summary>
    /// <param name="reading">The row.</param>
    /// <param name="plan">When the plant runs.</param>
    /// <param name="onTheLine">Its neighbours on the line.</param>
    public EntryDoubt? CounterDoubt(Reading reading, ProductionCalendar plan, IEnumerable<ChainSoFar> onTheLine)
    {
        if (reading.Counter is null || pace.Fits(reading, plan.Knowing(Ran))) return null;
        var known = Known(plan, reading.TakenAt);
        if (CounterEvidence.Of(reading, known.Clock) is not { } byHours
            || (byHours.ProbabilityHonest >= WorthTheTrack && !byHours.IsUnusual)) return null;
        return known.Weigh(reading, [.. onTheLine.Select(o => o.Known(plan, reading.TakenAt))])
            is { IsDoubted: true, Column: not "length" } doubt
            ? doubt
            : null;
    }

    /// <summary>
    /// The question about the length of one of its newest readings, as the same entry by a person would raise, with what came
    /// after it; null when it fits.
    /// </summary>
    /// <param name="after">How many of its readings came after that one.</param>
    /// <param name="prior">What is believed of the chain before its first reading.</param>
    /// <param name="plan">When the plant runs.</param>
    /// <param name="onTheLine">Its neighbours on the line.</param>
    public EntryDoubt? LengthDoubt(int after, WearPrior prior, ProductionCalendar plan, IEnumerable<ChainSoFar> onTheLine)
    {
        var (at, newest) = (readings.Count - 1 - after, readings[^1]);
        var row = readings[at];
        var known = Known(plan, newest.TakenAt) with { Readings = readings[..at], After = readings[(at + 1)..], Prior = prior };
        // What was read after it elsewhere on the chain says nothing of its place.
        if (after > 0 && !known.After.Any(r => r.Place == row.Place && r.Strand == row.Strand)) return null;
        if (known.IsOnTheWay(row) || known.Weigh(row) is not { IsWorthTheNeighbours: true }) return null;
        return known.Weigh(row, [.. onTheLine.Select(o => o.Known(plan, newest.TakenAt))])
            is { IsDoubted: true, Column: "length" } doubt
            ? doubt
            : null;
    }

    /// <summary>What the hours say against the counter of an event; null when they explain it, or nothing can be said.</summary>
    /// <param name="happening">The event.</param>
    /// <param name="plan">When the plant runs.</param>
    /// <param name="onTheLine">Its neighbours on the line.</param>
    public CounterEvidence? CounterDoubt(ChainEvent happening, ProductionCalendar plan, IEnumerable<ChainSoFar> onTheLine)
    {
        var known = Known(plan, happening.At, takenAsSetBack);
        return known.Weigh(happening) is { IsUnusual: true }
            && known.Weigh(happening, [.. onTheLine.Select(o => o.Known(plan, happening.At))]) is { IsDoubted: true } doubt
            ? doubt
            : null;
    }

    /// <summary>Whether a replacement is of this chain, where it is hardly worn by then; null for no doubt.</summary>
    /// <param name="happening">The event.</param>
    /// <param name="priorOf">What is believed of a chain before its first reading.</param>
    /// <param name="plan">When the plant runs.</param>
    /// <param name="onTheLine">Its neighbours on the line.</param>
    public ReplacementDoubt? WhichDoubt(
        ChainEvent happening, Func<ChainCard, WearPrior> priorOf, ProductionCalendar plan, IEnumerable<ChainSoFar> onTheLine) =>
        happening.Kind != ChainEventKind.Replacement ? null
        : ReplacementDoubt.Of(
            Known(plan, happening.At) with { Prior = priorOf(card) }, happening,
            [.. onTheLine.Select(o => o.Known(plan, happening.At) with { Prior = priorOf(o.Card) })]);

    /// <summary>What does not fit about a row's temperature; empty where it fits, or none was told before.</summary>
    public Phrase TemperatureOff(Reading reading) =>
        reading.TemperatureC is not null && readings.Exists(r => r.TemperatureC is not null)
            ? UsualTemperature.WhatIsOff(readings, reading)
            : Phrase.None;

    private KnownChain Known(ProductionCalendar plan, DateTimeOffset? at, IEnumerable<ChainEvent>? beside = null) => new(
        card,
        readings,
        [.. events.Concat(beside ?? []).Where(e => e.At is not { } happened || at is null || happened <= at)],
        WearPrior.Broad, plan.Knowing(Ran));

    /// <summary>A fitting and a change of the counter move the hours of the readings after it; nothing else does.</summary>
    private static bool MovesHours(ChainEvent happening) =>
        happening.Kind is ChainEventKind.Replacement or ChainEventKind.MeterReset;

    /// <summary>Goes on to an event.</summary>
    public void Add(ChainEvent happening)
    {
        if (MovesHours(happening)) events.Add(happening);
    }

    /// <summary>Takes an event back: it is sent back to whoever told it.</summary>
    public void TakeBack(ChainEvent happening) => events.Remove(happening);

    /// <summary>
    /// Goes on to an event whose counter was taken as set back without record: those after it are weighed from there.
    /// </summary>
    public void AddSetBack(ChainEvent happening)
    {
        takenAsSetBack.Add(
            happening with { Kind = ChainEventKind.MeterReset, CounterBefore = null, CounterAfter = happening.CounterBefore });
        Add(happening);
    }

    /// <summary>Goes on to the reading that comes after.</summary>
    public void Add(Reading reading)
    {
        LastCounterH = reading.Counter?.Hours ?? LastCounterH;
        LastTakenAt = reading.TakenAt ?? LastTakenAt;
        readings.Add(reading);
        pace.Add(reading);
        if (readings.Count > 2 * ReadingsThatTell) readings.RemoveRange(0, ReadingsThatTell);
    }

    /// <summary>Takes one of its newest readings back: it waits for a person.</summary>
    /// <param name="after">How many of its readings came after that one.</param>
    public void TakeBack(int after)
    {
        readings.RemoveAt(readings.Count - 1 - after);
        LastCounterH = readings.LastOrDefault(r => r.Counter is not null)?.Counter?.Hours;
        LastTakenAt = readings.LastOrDefault(r => r.TakenAt is not null)?.TakenAt;
    }
}
