using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Plant.Intake;

/// <summary>What is known of a chain when its next reading is judged.</summary>
/// <param name="card">The chain.</param>
/// <param name="events">Its events so far.</param>
/// <param name="lastCounterH">The hour counter at its last reading.</param>
/// <param name="lastTakenAt">The time of its last reading.</param>
public sealed class ChainSoFar(
    ChainCard card, IReadOnlyCollection<ChainEvent> events, double? lastCounterH = null, DateTimeOffset? lastTakenAt = null)
{
    /// <summary>Counters are read and rounded by people.</summary>
    private const double CounterRoundingH = 1;

    /// <summary>So many readings tell how a counter goes.</summary>
    private const int ReadingsThatTell = 60;

    /// <summary>A counter that the hours explain better than this needs no word of its length.</summary>
    private const double WorthTheTrack = 0.9;

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
    public EntryDoubt? CounterDoubt(Reading reading, ProductionCalendar plan)
    {
        var calendar = plan.Knowing(Ran);
        if (reading.Counter is null || pace.Fits(reading, calendar)) return null;
        List<ChainEvent> before = [.. events.Where(e => e.At is not { } at || reading.TakenAt is not { } taken || at <= taken)];
        var byHours = CounterEvidence.Of(reading, new CounterClock(card, readings, before, calendar));
        if (byHours is not { ProbabilityHonest: < WorthTheTrack }) return null;
        return ExpectedReading.Of(card, readings, before, reading, WearPrior.Broad, calendar) is { } expected
            && EntryDoubt.Of(card, reading, expected.Expected, expected.Alternatives)
                is { IsDoubted: true, Column: not "length" } doubt
            ? doubt
            : null;
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
}
