using System.Globalization;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Running;

namespace WearWatch.Benchmarks.Entries;

/// <summary>A slip that is made on purpose, and how its right name is told.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Spoil">The entry with the slip; null where it cannot be made here.</param>
/// <param name="IsNamed">Whether the first that was offered is what was meant.</param>
public sealed record TrialSlip(
    string Name, Func<Reading, Reading, TrialCase, Random, Reading?> Spoil, Func<Slip, Reading, TrialCase, bool> IsNamed)
{
    private static readonly Func<Slip, Reading, TrialCase, bool> ByCounter = (slip, right, trial) =>
        slip.CounterH is { } h && slip.Kind.SaysTheCounter() && Math.Abs(h - right.Counter!.Value.Hours) <= trial.ToleranceHours;

    /// <summary>The slips of an hour counter and of the date.</summary>
    public static IReadOnlyList<TrialSlip> OfCounters { get; } =
    [
        new("digits swapped", (r, _, _, chance) => Text(r, t => Swap(t, chance)), ByCounter),
        new("digit missing", (r, _, _, chance) => Text(r, t => t.Remove(chance.Next(t.Length), 1)), ByCounter),
        new("digit too many", (r, _, _, chance) =>
            Text(r, t => t.Insert(chance.Next(t.Length + 1), $"{chance.Next(10)}")), ByCounter),
        new("digit repeated", (r, _, _, chance) =>
            Text(r, t => chance.Next(t.Length) is var i ? t.Insert(i, $"{t[i]}") : t), ByCounter),
        new("tenths as hours", (r, _, _, chance) =>
            Counter(r, Math.Floor(r.Counter!.Value.Hours) * 10 + chance.Next(10)), ByCounter),
        new("other chain", (r, _, trial, _) => trial.OtherCounterH is { } other ? Counter(r, other) : null,
            (slip, right, trial) => slip.Kind is SlipKind.CounterOfOtherChain),
        new("counter reset", (r, last, _, chance) =>
            Counter(r, Math.Round(chance.NextDouble() * (r.Counter!.Value.Hours - last.Counter!.Value.Hours), 1)),
            (slip, _, _) => slip.Kind == SlipKind.CounterReset),
        new("month", (r, _, _, _) => r.TakenAt is { } at ? r with { TakenAt = at.AddMonths(-1) } : null, ByDate),
        new("year", (r, _, _, _) => r.TakenAt is { } at ? r with { TakenAt = at.AddYears(-1) } : null, ByDate),
        new("day", (r, _, _, chance) => r.TakenAt is { } at ? r with { TakenAt = at.AddDays(-1) } : null, ByDate),
    ];

    private static bool ByDate(Slip slip, Reading right, TrialCase trial) => slip.Kind == SlipKind.DateSlipped
        && slip.TakenAt is { } at && Math.Abs((at - right.TakenAt!.Value).TotalDays) <= 3;

    private static Reading? Text(Reading r, Func<string, string> spoil)
    {
        var text = r.Counter!.Value.Hours.ToString("0", CultureInfo.InvariantCulture);
        if (text.Length < 3) return null;
        var spoiled = double.Parse("0" + spoil(text), CultureInfo.InvariantCulture);
        return spoiled == Math.Round(r.Counter.Value.Hours) || spoiled > 1e7 ? null : Counter(r, spoiled);
    }

    private static string Swap(string text, Random chance)
    {
        int[] places = [.. Enumerable.Range(0, text.Length - 1).Where(i => text[i] != text[i + 1])];
        if (places.Length == 0) return text;
        var at = places[chance.Next(places.Length)];
        return text[..at] + text[at + 1] + text[at] + text[(at + 2)..];
    }

    private static Reading Counter(Reading r, double hours) => r with { Counter = new RunningHours(hours) };
}
