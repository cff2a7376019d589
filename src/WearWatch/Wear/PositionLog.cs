using WearWatch.Chains;

namespace WearWatch.Wear;

/// <summary>
/// Readings, fittings and changes of the hour counter of one position in the order in which they happened. Readings and events
/// come as two lists, each in order (readings that all have dates in any); events often have no date, so the counter has to say
/// where they belong.
/// </summary>
internal static class PositionLog
{
    /// <summary>Counters are copied by the hour.</summary>
    private const double SameCounterHours = 0.5;

    /// <summary>Puts readings and events into one order.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="gauged">Its readings in the order in which they were taken.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    public static IReadOnlyList<Happening> Of(
        ChainCard card, IReadOnlyList<GaugedReading> gauged, IReadOnlyList<ChainEvent> events)
    {
        var waiting = new Queue<Happening>(
            events.Where(e => e.Kind is ChainEventKind.Replacement or ChainEventKind.MeterReset).Select(Happening.Of));
        var log = new List<Happening>(gauged.Count + waiting.Count + 1);
        double? meter = null;

        var fitting = Happening.FittingOf(card);
        if (fitting is { } f && waiting.Any(e => IsSameFitting(e, f)))
        {
            waiting = new(
                waiting.Select(e => IsSameFitting(e, f) ? e with { OnCard = true, Lot = e.Lot.Length > 0 ? e.Lot : f.Lot } : e));
            fitting = null;
        }

        var order = AsTaken(gauged);
        for (var i = 0; i < order.Length; i++)
        {
            var reading = Happening.Of(gauged[order[i]].Reading, order[i]);
            if (fitting is { } own && (FittedBefore(own, reading) ?? LooksNew(i)))
            {
                Enter(own);
                fitting = null;
            }

            while (fitting is null && waiting.TryPeek(out var head) && HappenedBefore(head, reading, meter, () => LooksNew(i)))
                Enter(waiting.Dequeue());
            Enter(reading);
        }

        // The chain on the card is fitted already, or nothing would be known of it: what was read so far was another one before
        // it.
        if (fitting is { } last) Enter(last);
        log.AddRange(waiting);
        return log;

        void Enter(Happening entry)
        {
            log.Add(entry);
            meter = entry.After ?? meter;
        }

        // At the very counter of a fitting the length has to say which chain was read: a worn one reads more than a run-in one.
        bool LooksNew(int from) => order.Skip(from).Select(k => gauged[k].Elongation?.Percent).FirstOrDefault(p => p is not null)
            is not >= UnrecordedReplacement.NewChainBelowPercent;
    }

    /// <summary>The log without the events that no reading has followed; the fitting on the card stays.</summary>
    public static IReadOnlyList<Happening> UpToLastReading(IReadOnlyList<Happening> log)
    {
        var end = log.Count;
        while (end > 0 && log[end - 1] is { ReadingIndex: < 0, OnCard: false }) end--;
        return [.. log.Take(end)];
    }

    private static bool IsSameFitting(Happening replacement, Happening fitting) => replacement.IsFitting
        && (replacement.Before is { } b && fitting.Before is { } f
            ? Math.Abs(b - f) <= SameCounterHours || Math.Abs(replacement.After!.Value - f) <= SameCounterHours
            : replacement.At is { } at && at == fitting.At);

    /// <summary>Whether the card's fitting came before a reading; null when neither dates nor counters tell.</summary>
    private static bool? FittedBefore(Happening fitting, Happening reading) =>
        fitting.At is { } fitted && reading.At is { } taken && fitted != taken ? fitted < taken
        : fitting.Before is { } at && reading.Before is { } counter ? counter >= at ? true : null
        : true;

    /// <summary>Whether an event came before a reading, given what the counter showed last.</summary>
    private static bool HappenedBefore(Happening happened, Happening reading, double? meter, Func<bool> looksNew)
    {
        if (happened.At is { } at && reading.At is { } taken && at != taken) return at < taken;
        if (reading.Before is not { } counter) return false;
        if (happened.Before is not { } then) return happened.IsReset && counter < meter;

        var counterFell = counter < meter;
        if (counterFell) return then >= meter || then <= counter;
        if (Math.Abs(then - counter) <= SameCounterHours) return happened.IsFitting && looksNew();
        // Below the meter without a fall: it waits for the fall that nobody recorded.
        return then < counter && !(then < meter);
    }

    /// <summary>Which reading was taken when: by date if all have one, for they may arrive late; else as they stand.</summary>
    private static int[] AsTaken(IReadOnlyList<GaugedReading> gauged)
    {
        var standing = Enumerable.Range(0, gauged.Count);
        return gauged.All(g => g.Reading.TakenAt is not null)
            ? [.. standing.OrderBy(i => gauged[i].Reading.TakenAt)]
            : [.. standing];
    }
}
