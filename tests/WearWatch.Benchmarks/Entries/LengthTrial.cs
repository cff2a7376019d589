using WearWatch.Entries;
using WearWatch.Gauging;

namespace WearWatch.Benchmarks.Entries;

/// <summary>Spoils lengths of a fleet, one at a time, and looks whether they are asked about and what is offered.</summary>
internal sealed class LengthTrial(Func<TrialFleet, TrialChain, int, Reading, EntryDoubt?> ask, int readingsAfter)
{
    /// <summary>Entries by a person: the newest of their chain.</summary>
    public static LengthTrial Typed { get; } = new(SlipTrial.Ask, readingsAfter: 0);

    /// <summary>Rows of a file that others come after.</summary>
    public static LengthTrial Amid { get; } = new(SlipTrial.AskAmid, readingsAfter: 1);

    private const int ReadingsBefore = 4;
    private const double FarOff = 4;

    /// <summary>Corrections so near to the pitch that was measured are right: 0.1 % of elongation, a tape's doubt.</summary>
    private const double RightShare = 0.001;

    /// <summary>Many entries with one slip.</summary>
    public LengthCount Of(TrialFleet fleet, LengthSlip slip, int count, int seed)
    {
        var chance = new Random(seed);
        int made = 0, far = 0, held = 0, all = 0, first = 0, shown = 0, wrong = 0;
        for (var tries = 0; made < count && tries < 20 * count; tries++)
        {
            if (Draw(fleet, chance, ReadingsBefore, readingsAfter) is not var (chain, i)) continue;
            var right = chain.Readings[i];
            var other = slip.Name == LengthSlip.Neighbour ? OfNeighbour(fleet, chain, i, chance) : null;
            if (slip.Spoil(chain.Card, right, other, chance) is not { } spoiled) continue;
            if (Gauge.Measure(chain.Card.PitchMm, spoiled.Pitches, spoiled.LengthMm, spoiled.Tool)
                is GaugeOutcome.Refused) continue;
            made++;
            if (ask(fleet, chain, i, spoiled) is not { } doubt) continue;
            if (Math.Abs(doubt.Deviations) > FarOff) far++;
            if (!doubt.IsDoubted) continue;
            all++;
            if (Math.Abs(doubt.Deviations) > FarOff) held++;
            if (doubt.Slips is [var likeliest, ..] && IsRight(slip, likeliest, right, other)) first++;
            if (doubt.Offered.Any(s => IsRight(slip, s, right, other))) shown++;
            if (doubt.Chosen is { } only && IsWrong(only, right, other)) wrong++;
        }

        return new LengthCount(slip.Name, made, far, held, all, first, shown, wrong);
    }

    /// <summary>How many ordinary entries are asked about, of how many.</summary>
    public (int Held, int Of) Honest(TrialFleet fleet, int count, int seed)
    {
        var chance = new Random(seed);
        int held = 0, of = 0;
        for (var tries = 0; of < count && tries < 20 * count; tries++)
        {
            if (Draw(fleet, chance, 1, readingsAfter) is not var (chain, i)) continue;
            of++;
            if (ask(fleet, chain, i, chain.Readings[i]) is { IsDoubted: true }) held++;
        }

        return (held, of);
    }

    internal static (TrialChain Chain, int Index)? Draw(
        TrialFleet fleet, Random chance, int readingsBefore, int readingsAfter = 0)
    {
        var chain = fleet.Chains[chance.Next(fleet.Chains.Count)];
        if (!chain.IsPlain || chain.Readings.Count <= readingsBefore + readingsAfter) return null;
        var i = chance.Next(readingsBefore, chain.Readings.Count - readingsAfter);
        return SlipTrial.IsOrdinary(fleet, chain, i) ? (chain, i) : null;
    }

    /// <summary>What a neighbour on the line with the same pitch showed in the same round; null where there is none.</summary>
    internal static Reading? OfNeighbour(TrialFleet fleet, TrialChain chain, int i, Random chance)
    {
        var near = fleet.Chains.Where(c => c != chain && c.Card.Line == chain.Card.Line
            && Math.Abs(c.Card.PitchMm - chain.Card.PitchMm) < 0.01).ToList();
        if (near.Count == 0) return null;
        var other = near[chance.Next(near.Count)];
        return chain.Readings[i].TakenAt is { } at
            ? other.Readings.FirstOrDefault(r => r.TakenAt is { } then && Math.Abs((then - at).TotalDays) < 4)
            : other.Readings.ElementAtOrDefault(i);
    }

    private static bool IsRight(LengthSlip made, Slip slip, Reading right, Reading? other) =>
        made.Kinds.Contains(slip.Kind) && (slip.Kind.MeansReadAgain() || (slip.Kind == SlipKind.OtherChain
            ? slip.Chain == other!.Chain
            : Off(slip, right) < RightShare));

    private static bool IsWrong(Slip slip, Reading right, Reading? other) => slip.Kind == SlipKind.OtherChain
        ? slip.Chain != other?.Chain
        : other is not null || Off(slip, right) > RightShare;

    private static double Off(Slip slip, Reading right) =>
        Math.Abs(slip.LengthMm / slip.Pitches / (right.LengthMm / right.Pitches) - 1);
}
