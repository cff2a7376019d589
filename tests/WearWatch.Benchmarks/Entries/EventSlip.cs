using System.Globalization;
using WearWatch.Chains;
using WearWatch.Running;

namespace WearWatch.Benchmarks.Entries;

/// <summary>A slip in any field of a row of events but the chain and the kind of event, which say what happened.</summary>
/// <param name="Field">The column, in the words of the file format.</param>
/// <param name="Name">What it is.</param>
/// <param name="Spoil">The row with the slip; null where it cannot be made.</param>
internal sealed record EventSlip(string Field, string Name, Func<ChainEvent, Random, ChainEvent?> Spoil)
{
    /// <summary>All fields and slips.</summary>
    public static IReadOnlyList<EventSlip> All { get; } =
    [
        .. OfCounter("counter_h_before", e => e.CounterBefore, (e, h) => e with { CounterBefore = h }),
        .. OfCounter("counter_h_after", e => e.CounterAfter, (e, h) => e with { CounterAfter = h }),
        new("taken_at", "day", (e, _) => e with { At = e.At?.AddDays(-1) }),
        new("taken_at", "month", (e, _) => e with { At = e.At?.AddMonths(-1) }),
        new("taken_at", "year", (e, _) => e with { At = e.At?.AddYears(-1) }),
        new("taken_at", "left out", (e, _) => e.CounterBefore is null && e.CounterAfter is null ? null : e with { At = null }),
        .. OfCounter("counter_h_before", e => e.CounterBefore, (e, h) => e with { CounterBefore = h })
            .Where(s => s.Name != "left out").Select(s => s with { Name = s.Name + ", no date", Spoil = Undated(s.Spoil) }),
        new("taken_at", "month, no counter", (e, _) => Uncounted(e) with { At = e.At?.AddMonths(-1) }),
        new("taken_at", "year, no counter", (e, _) => Uncounted(e) with { At = e.At?.AddYears(-1) }),
        new("pitches_out", "anything", (e, chance) =>
            e.Kind == ChainEventKind.Shortened ? e with { PitchesOut = chance.Next(1, 100) } : null),
        new("new_pitches", "anything", (e, chance) =>
            e.Kind == ChainEventKind.Replacement ? e with { NewPitches = chance.Next(10, 10_000) } : null),
        new("new_teeth", "anything", (e, chance) =>
            e.Kind == ChainEventKind.SprocketReplaced ? e with { NewTeeth = chance.Next(5, 1000) } : null),
        new("take_up_mm", "anything", (e, chance) =>
            EventFacts.TellsTakeUp(e.Kind) ? e with { TakeUpMm = chance.Next(100_000) } : null),
    ];

    private static Func<ChainEvent, Random, ChainEvent?> Undated(Func<ChainEvent, Random, ChainEvent?> spoil) =>
        (e, chance) => spoil(e, chance) is { } spoiled ? spoiled with { At = null } : null;

    private static ChainEvent Uncounted(ChainEvent happening) => happening with { CounterBefore = null, CounterAfter = null };

    private static IEnumerable<EventSlip> OfCounter(
        string field, Func<ChainEvent, RunningHours?> of, Func<ChainEvent, RunningHours?, ChainEvent> with)
    {
        yield return Slip("digit missing", (text, chance) => text.Remove(chance.Next(text.Length), 1));
        yield return Slip("digit too many", (text, chance) => text.Insert(chance.Next(text.Length + 1), $"{chance.Next(10)}"));
        yield return Slip("tenfold", (text, _) => text + "0");
        yield return Slip("anything", (_, chance) =>
            Math.Round(Math.Pow(10, 7 * chance.NextDouble())).ToString(CultureInfo.InvariantCulture));
        yield return new(field, "left out", (e, _) => of(e) is null || e.At is null ? null : with(e, null));

        EventSlip Slip(string name, Func<string, Random, string> spoil) => new(field, name, (e, chance) =>
            of(e)?.Hours.ToString("0", CultureInfo.InvariantCulture) is { Length: > 1 } text
                ? with(e, new RunningHours(double.Parse("0" + spoil(text, chance), CultureInfo.InvariantCulture)))
                : null);
    }
}
