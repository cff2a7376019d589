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
    /// <param name="known">The chain as it is known.</param>
    /// <param name="entry">The reading that is being entered; its length does not matter here.</param>
    /// <param name="onTheLine">The clocks of its neighbours on the same line, where they are worth the look.</param>
    public static ExpectedReading? Of(KnownChain known, Reading entry, IReadOnlyList<CounterClock>? onTheLine = null)
    {
        var others = onTheLine ?? [];
        var clock = new CounterClock(known.Card, known.Readings, known.Events, known.Calendar,
            [.. others.SelectMany(o => o.RunsBefore(entry with { Counter = null }))]);
        var counter = CounterEvidence.Of(entry, clock, others);
        if (counter is { Accounts.Count: > 0 })
        {
            counter = counter with
            {
                Accounts = [.. counter.Accounts.Select(a => a with { Expected = At(known, a.Entry)?.Expected })],
            };
        }

        var asTold = At(known, entry);
        return asTold is not null ? asTold with { Alternatives = asTold.Alternatives with { Counter = counter } }
            : counter?.Accounts.FirstOrDefault(a => a.Expected is not null)?.Expected is { } likeliest
                ? new ExpectedReading(likeliest, new Alternatives { Counter = counter })
            : null;
    }

    /// <summary>What is expected at the hours of an entry, its counter and date taken as they are.</summary>
    private static ExpectedReading? At(KnownChain known, Reading entry)
    {
        var (card, readings, events, prior, calendar) = (known.Card, known.Readings, known.Events, known.Prior, known.Calendar);
        // A stand-in of a likely length takes the entry's place, so that it falls in its place among the lives and hours.
        var earlier = known.After.Count == 0 ? readings : Earlier([.. readings, .. known.After], entry) ?? readings;
        var last = ChainHistory.Take(card, earlier, events, calendar).Current.Observations is [.., var newest]
            ? newest
            : (Observation?)null;
        var standIn = entry with
        {
            LengthMm = entry.Pitches * card.PitchMm * (1 + (last?.ElongationPercent ?? Fresh.MeanPercent) / 100),
            TemperatureC = null,
            Place = last is { } read ? earlier[read.ReadingIndex].Place : "",
            Strand = last is { } same ? earlier[same.ReadingIndex].Strand : null,
        };
        // Another place of the same visit that is more worn would count for both.
        IReadOnlyList<Reading> all =
        [
            .. readings, standIn, .. known.After.Where(r => r.Place == entry.Place && r.Strand == entry.Strand),
        ];
        var life = ChainHistory.Take(card, all, events, calendar).Lives
            .FirstOrDefault(l => l.Observations.Any(IsStandIn));
        if (life is null) return null;

        var here = life.Observations.ToList().FindIndex(IsStandIn);
        var hours = life.Observations[here].HoursSinceFitting;
        var before = life with { Observations = [.. life.Observations.Where(o => !IsStandIn(o))] };
        Observation[] later = known.After.Count > 0 ? [.. life.Observations.Skip(here + 1)] : [];
        if (later.Length > 0) before = life with { Observations = [.. life.Observations.Take(here)] };
        if ((later.Length > 0 ? TrackBetween.Of(before, later, prior, hours) : TrackAhead.Of(before, prior, hours))
            is not { } expected) return null;
        var growth = expected.GrowthPercent;
        return new ExpectedReading(expected, new Alternatives
        {
            OtherStrands = OtherStrands.Of(card, readings, entry, expected),
            UsualPitches = UsualPitches([.. readings.Where(r => r.Place == entry.Place && r.Strand == entry.Strand)])
                ?? UsualPitches(readings),
            // Fitted at any moment since the last reading, as likely as any other, and worn since as the old one did.
            IfReplaced = new Expectation(
                Fresh.MeanPercent + growth / 2, Math.Sqrt(Math.Pow(Fresh.StandardDeviationPercent, 2) + growth * growth / 12)),
            IfCounterWasReset = HoursByCalendar(before, all, entry, calendar) is { } byCalendar
                && IsFarBehind(before, hours, byCalendar)
                ? TrackAhead.Of(before, prior, before.Observations[^1].HoursSinceFitting + byCalendar)
                : null,
        });

        bool IsStandIn(Observation observation) => observation.ReadingIndex == readings.Count;
    }

    /// <summary>The readings before an entry by their dates, in whatever order they stand; null where one has none.</summary>
    private static IReadOnlyList<Reading>? Earlier(IReadOnlyList<Reading> readings, Reading entry) =>
        entry.TakenAt is { } at && readings.All(r => r.TakenAt is not null) ? [.. readings.Where(r => r.TakenAt <= at)] : null;

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
