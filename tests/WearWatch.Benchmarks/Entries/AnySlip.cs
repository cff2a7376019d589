using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;

namespace WearWatch.Benchmarks.Entries;

/// <summary>A slip in any field of a row of readings.</summary>
/// <param name="Field">The column, in the words of the file format.</param>
/// <param name="Name">What it is.</param>
/// <param name="Spoil">
/// The row with the slip, of the right one, the one before and a neighbour's; null where it cannot be made.
/// </param>
internal sealed record AnySlip(string Field, string Name, Func<ChainCard, Reading, Reading, Reading?, Random, Reading?> Spoil)
{
    /// <summary>All fields and slips.</summary>
    public static IReadOnlyList<AnySlip> All { get; } =
    [
        .. TrialSlip.OfCounters.Select(s => new AnySlip(s.Name is "day" or "month" or "year" ? "taken_at" : "counter_h", s.Name,
            (_, r, last, other, chance) => r.Counter is null || last.Counter is null
                ? null
                : s.Spoil(r, last, new TrialCase(other?.Counter?.Hours, 0), chance))),
        .. LengthSlip.All.Select(s => new AnySlip(
            "length", s.Name, (card, r, _, other, chance) => s.Spoil(card, r, other, chance))),
        new("taken_at", "day and month", (_, r, _, _, _) => r.TakenAt is { Day: <= 12 } at && at.Day != at.Month
            ? r with { TakenAt = new DateTimeOffset(at.Year, at.Day, at.Month, at.Hour, at.Minute, 0, at.Offset) }
            : null),
        new("taken_at", "left out", (_, r, _, _, _) => r.Counter is null ? null : r with { TakenAt = null }),
        new("counter_h", "left out", (_, r, _, _, _) => r.TakenAt is null ? null : r with { Counter = null }),
        new("counter_h", "anything", (_, r, _, _, chance) =>
            r with { Counter = new RunningHours(Math.Round(Math.Pow(10, 7 * chance.NextDouble()))) }),
        new("length", "anything", (_, r, _, _, chance) => Length(r, Math.Round(Math.Pow(10, 6 * chance.NextDouble()), 1))),
        new("pitches", "tenfold", (_, r, _, _, _) => r with { Pitches = 10 * r.Pitches }),
        new("pitches", "anything", (_, r, _, _, chance) => r with { Pitches = 1 + (int)Math.Pow(10, 5 * chance.NextDouble()) }),
        new("chain", "a neighbour's row", (_, r, _, other, _) => other is null ? null : other with { Chain = r.Chain }),
        new("tool", "another", (_, r, _, _, _) => r with { Tool = r.Tool == Tool.Tape ? Tool.Caliper : Tool.Tape }),
        new("temperature_c", "tenfold", (_, r, _, _, _) =>
            r.TemperatureC is { } t and <= 40 ? r with { TemperatureC = 10 * t } : null),
        new("temperature_c", "in Fahrenheit", (_, r, _, _, _) =>
            r.TemperatureC is { } t ? r with { TemperatureC = 1.8 * t + 32 } : null),
        new("temperature_c", "anything", (_, r, _, _, chance) => r with { TemperatureC = chance.Next(-60, 400) }),
        new("place", "another", (_, r, _, _, chance) => r with { Place = r.Place == "A" ? "B" : "A" }),
        new("strand", "another", (card, r, _, _, _) => card.Strands > 1 ? r with { Strand = r.Strand == 2 ? 1 : 2 } : null),
        new("take_up_mm", "anything", (_, r, _, _, chance) => r with { TakeUpMm = chance.Next(100_000) }),
    ];

    private static Reading Length(Reading r, double mm) => r with
    {
        LengthMm = mm,
        Written = mm.ToString(System.Globalization.CultureInfo.InvariantCulture),
        Unit = Units.LengthUnit.Millimetre,
    };
}
