using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Entries;

/// <summary>A chain as it is known when something of it is entered.</summary>
/// <param name="Card">Its card.</param>
/// <param name="Readings">Its readings before, in the order in which they were taken.</param>
/// <param name="Events">Its events before, in the order in which they happened.</param>
/// <param name="Prior">What is believed of it before its first reading.</param>
/// <param name="Calendar">When its line runs, with what is recorded of it.</param>
public sealed record KnownChain(
    ChainCard Card, IReadOnlyList<Reading> Readings, IReadOnlyList<ChainEvent> Events, WearPrior Prior,
    ProductionCalendar Calendar)
{
    /// <summary>So many readings after it tell of one that stands amid others; one of them may be a slip itself.</summary>
    public const int ReadingsAfter = 3;

    private const double UsualDeviations = 2;
    private const double OutOfSightDays = 50 * 365.25;

    /// <summary>
    /// Its next readings after an entry that stands amid others, as a row of a file; empty for one that is the newest.
    /// </summary>
    public IReadOnlyList<Reading> After { get; init; } = [];

    /// <summary>What is known of its hours, its neighbours not asked.</summary>
    public CounterClock Clock => new(Card, Readings, Events, Calendar);

    /// <summary>
    /// Whether an entry amid others lies on the way from the one before it to the one after it, so that it needs no look at the
    /// track.
    /// </summary>
    public bool IsOnTheWay(Reading entry)
    {
        if (Readings is not [.., var last] || After is not [var next, ..]) return false;
        if (GaugedReading.All(Card, [last, entry, next])
            is not [{ Elongation.Percent: var from }, { Elongation: { } here }, { Elongation.Percent: var to }]) return false;
        var scatter = UsualDeviations * here.ScatterPercent;
        return here.Percent > Math.Min(from, to) - scatter && here.Percent < Math.Max(from, to) + scatter;
    }

    /// <summary>Weighs an entry; null when nothing is expected of it yet.</summary>
    /// <param name="entry">The entry; one that the gauge does not refuse.</param>
    /// <param name="onTheLine">
    /// The neighbours on its line, for an entry that is <see cref="EntryDoubt.IsWorthTheNeighbours"/>.
    /// </param>
    public EntryDoubt? Weigh(Reading entry, IReadOnlyList<KnownChain>? onTheLine = null)
    {
        var others = onTheLine ?? [];
        if (Expect(entry, [.. others.Select(o => o.Clock)]) is not { } expected) return null;
        var doubt = EntryDoubt.Of(Card, entry, expected.Expected, expected.Alternatives with
        {
            OtherChains =
            [
                .. others.Select(o => o.AsNeighbour(entry, Card, IsUsual(expected, entry))).OfType<NeighbourReading>(),
            ],
        }) with
        { TemperatureOff = UsualTemperature.WhatIsOff(Readings, entry) };
        return doubt.IsDoubted || !doubt.MayMoveFar || After.Count > 0
            ? doubt
            : doubt with { MovesEarlyDays = EarlyDaysMoved(entry, doubt) };
    }

    /// <summary>By how many days the early date comes to lie elsewhere than if the length were what was expected.</summary>
    private double EarlyDaysMoved(Reading entry, EntryDoubt doubt)
    {
        var expected = entry.LengthMm * (1 + doubt.Expected.MeanPercent / 100) / (1 + doubt.ElongationPercent / 100);
        return EarlyDays(entry) - EarlyDays(entry with { LengthMm = expected });
    }

    /// <summary>Days to the early end of the forecast; far away where it is not in sight.</summary>
    private double EarlyDays(Reading entry)
    {
        var at = entry.TakenAt ?? DateTimeOffset.UnixEpoch;
        var early = Assessment.Of(Card, [.. Readings, entry], Events, Prior, Calendar, at).DateAt(5, Calendar, at);
        return early is { } date ? (date - at).TotalDays : OutOfSightDays;
    }

    /// <summary>
    /// What the hours say of the counter that an event tells, such as that of an oiling; null where it tells none that goes on,
    /// or nothing was told before it.
    /// </summary>
    /// <param name="happening">The event.</param>
    /// <param name="onTheLine">The neighbours on its line.</param>
    public CounterEvidence? Weigh(ChainEvent happening, IReadOnlyList<KnownChain>? onTheLine = null)
    {
        if (CounterOf(happening) is not { } counter) return null;
        // Only the hours matter: a reading stands for what the counter showed at that moment.
        var entry = new Reading
        {
            Chain = Card.Name,
            TakenAt = happening.At,
            Counter = counter,
            Tool = Tool.Tape,
            Pitches = 1,
            LengthMm = Card.PitchMm,
        };
        CounterClock[] others = [.. (onTheLine ?? []).Select(o => o.Clock)];
        if (happening.At is not null) return CounterEvidence.Of(entry, Clock, others);

        // What has no date may have happened at any time before; but where a counter began anew it goes on no further.
        var beganAnew = BeginsAnew(happening);
        var evidence = CounterEvidence.Of(
            entry, new CounterClock(Card, UpToTheEnd(counter), [], Calendar) { MayBeBefore = !beganAnew }, others);
        return counter.Hours < evidence?.Expected.LastH && !beganAnew ? null : evidence;
    }

    /// <summary>The readings up to the end of that run of counters whose last is nearest to a counter without a date.</summary>
    private IReadOnlyList<Reading> UpToTheEnd(RunningHours counter)
    {
        int[] counted = [.. Enumerable.Range(0, Readings.Count).Where(i => Readings[i].Counter is not null)];
        var ends = counted.Where((at, i) => i + 1 == counted.Length || Readings[counted[i + 1]].Counter < Readings[at].Counter);
        var end = ends.OrderBy(at => Math.Abs(Readings[at].Counter!.Value.Hours - counter.Hours)).FirstOrDefault(-1);
        return [.. Readings.Take(end + 1)];
    }

    private static bool BeginsAnew(ChainEvent happening) =>
        happening.Kind == ChainEventKind.MeterReset || happening.CounterAfter < happening.CounterBefore;

    private static RunningHours? CounterOf(ChainEvent happening) => happening.CounterBefore
        ?? (happening.Kind is ChainEventKind.Replacement or ChainEventKind.MeterReset ? null : happening.CounterAfter);

    private ExpectedReading? Expect(Reading entry, IReadOnlyList<CounterClock> onTheLine) =>
        ExpectedReading.Of(this, entry, onTheLine);

    /// <summary>What this chain would show if the entry were its own; null when nothing says.</summary>
    private NeighbourReading? AsNeighbour(Reading entry, ChainCard told, bool? isToldsCount)
    {
        // Its own counter is another; at what it shows by now nothing tells but the time and how it usually goes.
        var own = entry with { Chain = Card.Name, Counter = null };
        if (own.TakenAt is null)
        {
            if (Clock.Expect(own) is not { } counter) return null;
            own = own with { Counter = new RunningHours(Math.Round(counter.AboutH)) };
        }

        return Expect(own, []) is { } expected
            ? NeighbourReading.Of(Card, expected.Expected, told, IsUsual(expected, entry), isToldsCount)
            : null;
    }

    private static bool? IsUsual(ExpectedReading expected, Reading entry) =>
        expected.Alternatives.UsualPitches is { } usual ? usual == entry.Pitches : null;
}
