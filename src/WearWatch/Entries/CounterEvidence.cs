using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Entries;

/// <summary>What the hours say of an entry's counter: how likely it is as told, and what else it may have been.</summary>
public sealed record CounterEvidence
{
    /// <summary>Accounts that weigh less than this share of the best one, in ln, are not worth a look at the length.</summary>
    private const double WorthWeighing = 12;
    private const int MostAccounts = 10;

    /// <summary>Nearer than this nothing else is tried; where the neighbours are known, nearer than a usual step only.</summary>
    private const double NearDeviations = 2.5;
    private const double UsualDeviations = 1;

    /// <summary>Two numbers within an hour are one explanation.</summary>
    private const double SameCounterHours = 1;

    /// <summary>What was expected.</summary>
    public required ExpectedCounter Expected { get; init; }

    /// <summary>ln of the probability density of the counter as told, an hour.</summary>
    public required double LogHonest { get; init; }

    /// <summary>ln of the density, an hour, of a counter that was changed or stood still: as far behind as any other.</summary>
    public double LogIfChanged => -Math.Log(Math.Max(1, Expected.AboutH - Expected.LastH));

    /// <summary>What else it may have been, likeliest first; empty for a counter that fits.</summary>
    public required IReadOnlyList<CounterAccount> Accounts { get; init; }

    /// <summary>Probability that the counter is as told, by the hours alone.</summary>
    public double ProbabilityHonest
    {
        get
        {
            var best = Accounts.Select(a => a.LogWeight).Append(LogHonest).Max();
            var honest = Account.HonestShare * Math.Exp(LogHonest - best);
            return honest / (honest + Accounts.Sum(a => Math.Exp(a.LogWeight - best)));
        }
    }

    /// <summary>Whether the counter goes farther or less far than it usually does: its neighbours may tell more.</summary>
    public required bool IsUnusual { get; init; }

    /// <summary>Whether the counter alone, without any length, is less likely than what else it may have been.</summary>
    public bool IsDoubted => ProbabilityHonest < EntryDoubt.DoubtBelow;

    /// <summary>What to tell the person who entered it, in plain words.</summary>
    public Phrase Question => Accounts is [var first, ..] && first.Kind != SlipKind.CounterWrong
        ? Phrase.Of($"{Expected.Words} Was it {first.Words}?")
        : $"{Expected.Words} Please read the counter again.";

    /// <summary>Weighs an entry's counter; null where it has none or nothing was told before it.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="clock">What is known of the hours of its chain.</param>
    /// <param name="others">The clocks of other chains whose counter it may be.</param>
    public static CounterEvidence? Of(Reading entry, CounterClock clock, IReadOnlyList<CounterClock>? others = null)
    {
        if (clock.LogDensity(entry) is not { } honest || clock.Expect(entry) is not { } expected) return null;
        var near = honest > CounterClock.Impossible
            && expected.IsNear(entry.Counter!.Value.Hours, others is { Count: > 0 } ? UsualDeviations : NearDeviations);
        return new CounterEvidence
        {
            Expected = expected,
            LogHonest = honest,
            IsUnusual = !expected.IsNear(entry.Counter!.Value.Hours, UsualDeviations),
            Accounts = near ? [] : Weigh(new(entry, clock, expected, others ?? [])),
        };
    }

    private static List<CounterAccount> Weigh(CounterCase told)
    {
        var all = CounterSlips.All
            .SelectMany(slip => Alike(told, slip.Meant(told)).Select(m =>
                new CounterAccount(slip.Kind, m.Entry, m.Words, Math.Log(slip.Share) + m.LogLikelihood)))
            .Where(a => double.IsFinite(a.LogWeight)).OrderByDescending(a => a.LogWeight).ToList();
        var kept = new List<CounterAccount>();
        foreach (var account in all)
        {
            var same = kept.FindIndex(k => IsSame(k, account));
            if (same >= 0) kept[same] = kept[same] with { LogWeight = Sum(kept[same].LogWeight, account.LogWeight) };
            else if (kept.Count < MostAccounts && account.LogWeight > all[0].LogWeight - WorthWeighing) kept.Add(account);
        }

        return [.. kept.OrderByDescending(k => k.LogWeight)];
    }

    /// <summary>
    /// Numbers of one kind that lie nearer together than the hours are known are one account, of which the likeliest stands for
    /// all.
    /// </summary>
    private static List<MeantEntry> Alike(CounterCase told, IEnumerable<MeantEntry> meant)
    {
        var kept = new List<MeantEntry>();
        foreach (var m in meant.Where(m => double.IsFinite(m.LogLikelihood)).OrderByDescending(m => m.LogLikelihood))
        {
            var near = kept.FindIndex(k => k.Entry.TakenAt == m.Entry.TakenAt
                && Math.Abs(k.Entry.Counter!.Value.Hours - m.Entry.Counter!.Value.Hours) <= told.Expected.DeviationHours);
            if (near < 0) kept.Add(m);
            else kept[near] = kept[near] with { LogLikelihood = Sum(kept[near].LogLikelihood, m.LogLikelihood) };
        }

        return kept;
    }

    private static bool IsSame(CounterAccount one, CounterAccount other) => one.Entry.TakenAt == other.Entry.TakenAt
        && one.Kind.SaysTheCounter() && other.Kind.SaysTheCounter()
        && Math.Abs(one.Entry.Counter!.Value.Hours - other.Entry.Counter!.Value.Hours) <= SameCounterHours;

    private static double Sum(double one, double other) =>
        Math.Max(one, other) + Math.Log(1 + Math.Exp(-Math.Abs(one - other)));
}
