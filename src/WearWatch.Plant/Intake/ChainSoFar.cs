using WearWatch.Chains;
using WearWatch.Gauging;

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

    /// <summary>Goes on to the reading that comes after.</summary>
    public void Add(Reading reading)
    {
        LastCounterH = reading.Counter?.Hours ?? LastCounterH;
        LastTakenAt = reading.TakenAt ?? LastTakenAt;
    }
}
