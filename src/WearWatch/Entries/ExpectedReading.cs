using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Entries;

/// <summary>What a chain's track expects of a reading that is being entered.</summary>
/// <param name="Expected">The elongation expected at the reading's running hours.</param>
/// <param name="Alternatives">
/// What else the track says of the moment: what a new chain would show, or the chain after a reset of the counter.
/// </param>
public sealed record ExpectedReading(Expectation Expected, Alternatives Alternatives)
{
    /// <summary>
    /// Elongation of a chain that has just been fitted by length tolerance and run-in; see <see cref="Expectation.NewChain"/>.
    /// </summary>
    private static readonly Expectation Fresh = Expectation.NewChain;

    /// <summary>What is expected of an entry; null when nothing places it among the chain's readings.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="readings">Its earlier readings in the order in which they were taken.</param>
    /// <param name="events">Its events in the order in which they happened.</param>
    /// <param name="entry">The reading that is being entered; its length does not matter here.</param>
    /// <param name="prior">What is believed of the chain before its first reading.</param>
    /// <param name="calendar">When its line runs.</param>
    /// <param name="onTheLine">The clocks of its neighbours on the same line, where they are worth the look.</param>
    public static ExpectedReading? Of(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, Reading entry,
        WearPrior prior, ProductionCalendar calendar, IReadOnlyList<CounterClock>? onTheLine = null)
    {
        var others = onTheLine ?? [];
        var clock = new CounterClock(
            card, readings, events, calendar, [.. others.SelectMany(o => o.RunsBefore(entry with { Counter = null }))]);
        var counter = CounterEvidence.Of(entry, clock, others);
        if (counter is { Accounts.Count: > 0 })
        {
            counter = counter with
            {
                Accounts = [.. counter.Accounts.Select(a => a with
                {
                    Expected = At(card, readings, events, a.Entry, prior, calendar)?.Expected,
                })],
            };
        }

        var asTold = At(card, readings, events, entry, prior, calendar);
        return asTold is not null ? asTold with { Alternatives = asTold.Alternatives with { Counter = counter } }
            : counter?.Accounts.FirstOrDefault(a => a.Expected is not null)?.Expected is { } likeliest
                ? new ExpectedReading(likeliest, new Alternatives { Counter = counter })
            : null;
    }

    /// <summary>What is expected at the hours of an entry, its counter and date taken as they are.</summary>
    private static ExpectedReading? At(
        ChainCard card, IReadOnlyList<Reading> readings, IReadOnlyList<ChainEvent> events, Reading entry,
        WearPrior prior, ProductionCalendar calendar)
    {
        // A stand-in of a likely length takes the entry's place, so that it falls in its place among the lives and hours.
        var last = ChainHistory.Take(card, readings, events, calendar).Current.Observations is [.., var newest]
            ? newest
            : (Observation?)null;
        var standIn = entry with
        {
            LengthMm = entry.Pitches * card.PitchMm * (1 + (last?.ElongationPercent ?? Fresh.MeanPercent) / 100),
            TemperatureC = null,
            Place = last is { } read ? readings[read.ReadingIndex].Place : "",
            Strand = last is { } same ? readings[same.ReadingIndex].Strand : null,
        };
        var life = ChainHistory.Take(card, [.. readings, standIn], events, calendar).Lives
            .FirstOrDefault(l => l.Observations.Any(IsStandIn));
        if (life is null) return null;

        var hours = life.Observations.First(IsStandIn).HoursSinceFitting;
        var before = life with { Observations = [.. life.Observations.Where(o => !IsStandIn(o))] };
        var expected = TrackAhead.Of(before, prior, hours);
        var growth = expected.GrowthPercent;
        return new ExpectedReading(expected, new Alternatives
        {
            OtherStrands = OtherStrands.Of(card, readings, entry, expected),
            UsualPitches = UsualPitches([.. readings.Where(r => r.Place == entry.Place && r.Strand == entry.Strand)])
                ?? UsualPitches(readings),
            // Fitted at any moment since the last reading, as likely as any other, and worn since as the old one did.
            IfReplaced = new Expectation(
                Fresh.MeanPercent + growth / 2, Math.Sqrt(Math.Pow(Fresh.StandardDeviationPercent, 2) + growth * growth / 12)),
            IfCounterWasReset = HoursByCalendar(before, readings, entry, calendar) is { } byCalendar
                && IsFarBehind(before, hours, byCalendar)
                ? TrackAhead.Of(before, prior, before.Observations[^1].HoursSinceFitting + byCalendar)
                : null,
        });

        bool IsStandIn(Observation observation) => observation.ReadingIndex == readings.Count;
    }

    /// <summary>The count of more than half of the readings; null where there is none.</summary>
    private static int? UsualPitches(IReadOnlyList<Reading> readings) => readings.GroupBy(r => r.Pitches)
        .Where(g => 2 * g.Count() > readings.Count).Select(g => (int?)g.Key).FirstOrDefault();

    /// <summary>Running hours since the last reading by dates and calendar; null when one of them has no date.</summary>
    private static double? HoursByCalendar(
        FittedChain before, IReadOnlyList<Reading> readings, Reading entry, ProductionCalendar calendar) =>
        before.Observations is [.., var last] && readings[last.ReadingIndex].TakenAt is { } from && entry.TakenAt is { } to
            ? calendar.Between(from, to).Hours
            : null;

    /// <summary>
    /// Whether the counter has gone less than half of what the calendar lets expect, and that by more than a day.
    /// </summary>
    private static bool IsFarBehind(FittedChain before, double hours, double byCalendar) =>
        byCalendar > 24 && hours - before.Observations[^1].HoursSinceFitting < byCalendar / 2;
}
