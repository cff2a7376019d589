using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Entries;

/// <summary>What came of many entries with one slip.</summary>
/// <param name="Slip">The slip.</param>
/// <param name="Made">How many were made.</param>
/// <param name="Matter">
/// How many of them put the hours wrong by 100 h and more than half of the hours since the last reading; without dates, where a
/// skipped
/// round looks the same, by more than twice them.
/// </param>
/// <param name="Held">How many of those that matter are asked about.</param>
/// <param name="HeldOfAll">How many of all are asked about.</param>
/// <param name="Named">How many of those that matter and are asked about have what was meant offered first.</param>
public sealed record SlipCount(string Slip, int Made, int Matter, int Held, int HeldOfAll, int Named)
{
    public double HeldShare => Matter == 0 ? 1 : (double)Held / Matter;

    public double NamedShare => Held == 0 ? 1 : (double)Named / Held;

    public override string ToString() =>
        FormattableString.Invariant($"{Slip,-16} made {Made,5}  held of all {(double)HeldOfAll / Math.Max(1, Made),6:0.000}  ")
        + FormattableString.Invariant($"matter {Matter,5}  held {HeldShare,6:0.000}  first {NamedShare,6:0.000}");
}

/// <summary>Spoils entries of a fleet, one at a time, and looks whether they are asked about as the desk does.</summary>
public static class SlipTrial
{
    private const int ReadingsBefore = 4;
    private const double MattersHours = 100;

    /// <summary>Many entries with one slip.</summary>
    public static SlipCount Of(TrialFleet fleet, TrialSlip slip, int count, int seed)
    {
        var chance = new Random(seed);
        int made = 0, matter = 0, held = 0, all = 0, named = 0;
        for (var tries = 0; made < count && tries < 20 * count; tries++)
        {
            var chain = fleet.Chains[chance.Next(fleet.Chains.Count)];
            if (!chain.IsPlain || chain.Readings.Count <= ReadingsBefore) continue;
            var i = chance.Next(ReadingsBefore, chain.Readings.Count);
            if (!IsOrdinary(fleet, chain, i)) continue;
            var (right, last) = (chain.Readings[i], chain.Readings[i - 1]);
            var gap = right.Counter!.Value.Hours - last.Counter!.Value.Hours;
            var trial = new TrialCase(Other(fleet, chain, i, chance), Math.Max(24, gap / 4));
            if (slip.Spoil(right, last, trial, chance) is not { } spoiled) continue;
            made++;
            var doubt = Ask(fleet, chain, i, spoiled);
            var isHeld = doubt?.IsDoubted == true;
            if (isHeld) all++;
            if (!Matters(slip, right, spoiled, gap)) continue;
            matter++;
            if (!isHeld) continue;
            held++;
            if (doubt!.Slips is [var first, ..] && slip.IsNamed(first, right, trial)) named++;
        }

        return new SlipCount(slip.Name, made, matter, held, all, named);
    }

    /// <summary>
    /// By how many days the early date is put off at most, by entries with a slip that nobody is asked about, against the right
    /// ones.
    /// </summary>
    public static double MostDaysMoved(TrialFleet fleet, TrialSlip slip, int count, int seed)
    {
        var chance = new Random(seed);
        var (made, most) = (0, 0.0);
        for (var tries = 0; made < count && tries < 20 * count; tries++)
        {
            var chain = fleet.Chains[chance.Next(fleet.Chains.Count)];
            if (chain.Readings.Count <= ReadingsBefore) continue;
            var i = chance.Next(ReadingsBefore, chain.Readings.Count);
            if (!IsOrdinary(fleet, chain, i)) continue;
            var right = chain.Readings[i];
            var trial = new TrialCase(Other(fleet, chain, i, chance), 0);
            if (slip.Spoil(right, chain.Readings[i - 1], trial, chance) is not { } spoiled) continue;
            made++;
            if (Ask(fleet, chain, i, spoiled)?.IsDoubted == true) continue;
            if (Early(right) is { } early && Early(spoiled) is { } moved)
                most = Math.Max(most, Math.Abs((moved - early).TotalDays));

            DateTimeOffset? Early(Reading told) => Assessment.Of(
                chain.Card, [.. chain.Before(i), told], chain.EventsBefore(i), WearPrior.Broad, fleet.Calendar,
                right.TakenAt!.Value).DateAt(5, fleet.Calendar, right.TakenAt!.Value);
        }

        return most;
    }

    /// <summary>How many ordinary entries are asked about because of their counter or date, of how many.</summary>
    public static (int Held, int Of) Honest(TrialFleet fleet, int count, int seed)
    {
        var chance = new Random(seed);
        int held = 0, of = 0;
        for (var tries = 0; of < count && tries < 20 * count; tries++)
        {
            var chain = fleet.Chains[chance.Next(fleet.Chains.Count)];
            if (!chain.IsPlain || chain.Readings.Count < 2) continue;
            var i = chance.Next(1, chain.Readings.Count);
            if (!IsOrdinary(fleet, chain, i)) continue;
            of++;
            if (Ask(fleet, chain, i, chain.Readings[i]) is { IsDoubted: true, Column: not "length" }) held++;
        }

        return (held, of);
    }

    internal static bool IsOrdinary(TrialFleet fleet, TrialChain chain, int i) =>
        chain.Readings[i].Counter is { } now && chain.Readings[i - 1].Counter is { } last && now >= last
        && !fleet.IsSlip(chain.Card.Name, i)
        && Gauge.Measure(chain.Card.PitchMm, chain.Readings[i].Pitches, chain.Readings[i].LengthMm, chain.Readings[i].Tool)
            is GaugeOutcome.Measured;

    private static bool Matters(TrialSlip slip, Reading right, Reading spoiled, double gap) => slip.Name switch
    {
        "day" or "counter reset" => true,
        "month" or "year" => true,
        _ => Math.Abs(spoiled.Counter!.Value.Hours - right.Counter!.Value.Hours)
            > Math.Max(MattersHours, right.TakenAt is null ? 2 * gap : gap / 2),
    };

    private static double? Other(TrialFleet fleet, TrialChain chain, int i, Random chance)
    {
        var near = fleet.Chains.Where(c => c != chain && c.Card.Line == chain.Card.Line).ToList();
        if (near.Count == 0) return null;
        var other = near[chance.Next(near.Count)];
        return chain.Readings[i].TakenAt is { } at
            ? other.Readings.FirstOrDefault(r => r.TakenAt is { } then && Math.Abs((then - at).TotalDays) < 2)?.Counter?.Hours
            : other.Readings.Take(i + 1).LastOrDefault()?.Counter?.Hours;
    }

    /// <summary>As the desk asks: with the neighbours where the entry is unusual.</summary>
    internal static EntryDoubt? Ask(TrialFleet fleet, TrialChain chain, int i, Reading entry) =>
        Ask(fleet, chain, chain.At(i, fleet.Calendar), i, entry);

    /// <summary>As the rows of a file are asked about that others come after; null where it lies on the way.</summary>
    internal static EntryDoubt? AskAmid(TrialFleet fleet, TrialChain chain, int i, Reading entry) =>
        chain.Amid(i, fleet.Calendar) is var known && known.IsOnTheWay(entry) ? null : Ask(fleet, chain, known, i, entry);

    private static EntryDoubt? Ask(TrialFleet fleet, TrialChain chain, KnownChain known, int i, Reading entry) =>
        known.Weigh(entry) is { IsWorthTheNeighbours: false } usual ? usual : known.Weigh(entry, [.. fleet.Chains
            .Where(c => c != chain && c.Card.Line.Length > 0 && c.Card.Line == chain.Card.Line)
            .Select(c => c.At(entry, fleet.Calendar, i)).OfType<KnownChain>()]);
}
