using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Entries;

/// <summary>
/// Whether a reading that was entered fits what the chain's track expects, and what may have gone wrong if not.
/// </summary>
/// <remarks>
/// Bayes over an honest reading and the slips people make: each has odds of its own and says what the elongation would be, and
/// how near that comes to what is expected. Densities are taken of the relative length, so that a slip of a factor and one of a
/// pitch can be compared. Nothing is changed here: a person says yes to a slip, or measures again.
/// </remarks>
public sealed record EntryDoubt
{
    /// <summary>An honest reading less likely than this is doubted.</summary>
    public const double DoubtBelow = 0.2;

    /// <summary>Slips less likely than this are not worth a line.</summary>
    private const double WorthTelling = 0.01;

    private const double UsualDeviations = 2;
    private const double MostDaysUnasked = 90;
    private const double MostDaysToTell = 1500;

    /// <summary>Odds of more than this share of the likeliest's are near to it.</summary>
    private const double NearShare = 1.0 / 3;
    private const int MostOffered = 2;

    private static readonly Phrase Again = $"Please measure again.";

    /// <summary>The elongation as entered, in percent.</summary>
    public required double ElongationPercent { get; init; }

    /// <summary>What was expected.</summary>
    public required Expectation Expected { get; init; }

    /// <summary>Probability that the reading is what it says.</summary>
    public required double ProbabilityHonest { get; init; }

    /// <summary>The slips that would explain it, likeliest first.</summary>
    public required IReadOnlyList<Slip> Slips { get; init; }

    /// <summary>Whether it should wait for a person's word before it moves a forecast.</summary>
    public bool IsDoubted => ProbabilityHonest < DoubtBelow || MovesFar || !TemperatureOff.IsEmpty;

    /// <summary>By how many days it puts off the early date, against a length as expected; where it is unusual.</summary>
    public double MovesEarlyDays { get; init; }

    /// <summary>What does not fit about the chain's temperature, in plain words; empty when it fits or was not told.</summary>
    public Phrase TemperatureOff { get; init; } = Phrase.None;

    /// <summary>A swap is not put off or brought forward so far by one unusual reading that nobody was asked about.</summary>
    private bool MovesFar => Math.Abs(MovesEarlyDays) > MostDaysUnasked;

    /// <summary>
    /// Whether its length lies farther off than nineteen in twenty do, so that it is worth a look how far it moves the swap.
    /// </summary>
    internal bool MayMoveFar => Math.Abs(Deviations) > UsualDeviations;

    /// <summary>How many standard deviations it lies off, the scatter of the gauge included; negative when too short.</summary>
    public required double Deviations { get; init; }

    /// <summary>Whether it lies off so far that the neighbours on the line may tell more.</summary>
    public bool IsWorthTheNeighbours => IsDoubted || IsCounterUnusual || MayMoveFar;

    private bool IsCounterUnusual { get; init; }

    /// <summary>What its hour counter was expected to show; null when it has none, or nothing was told before it.</summary>
    public ExpectedCounter? ExpectedCounter { get; init; }

    /// <summary>What looks wrong, in the words of the file format: counter, date, length or temperature.</summary>
    public string Column => !TemperatureOff.IsEmpty ? "temperature_c"
        : ProbabilityHonest >= DoubtBelow ? "length"
        : Slips is [{ Kind: SlipKind.DateSlipped }, ..] ? "taken_at"
        : Slips is [var first, ..] && first.Kind.IsOfCounter() ? "counter_h"
        : "length";

    /// <summary>Weighs an entry.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="entry">The reading as entered; one that the gauge does not refuse.</param>
    /// <param name="expected">What the track expects of the chain at that moment.</param>
    /// <param name="alternatives">What else is known.</param>
    /// <exception cref="ArgumentException">The gauge refuses the entry: then there is nothing to weigh.</exception>
    public static EntryDoubt Of(ChainCard card, Reading entry, Expectation expected, Alternatives? alternatives = null)
    {
        var known = alternatives ?? Alternatives.Unknown;
        var honest = Account.Honest(card, entry, expected);
        List<Account> accounts =
        [
            .. SlipsOfEntry.For(card, entry, expected, known).Prepend(Account.RateRose(card, entry, expected)).Prepend(honest)
                .Select(a => a with { LogWeight = a.LogWeight + LogCounter(a, known.Counter) }),
            .. (known.Counter?.Accounts ?? []).Select(c => Account.OfCounter(card, c, expected, known)),
        ];
        var best = accounts.MaxBy(a => a.LogWeight)!;
        var total = accounts.Sum(a => Math.Exp(a.LogWeight - best.LogWeight));
        return new EntryDoubt
        {
            ElongationPercent = honest.ElongationPercent,
            // What is itself in doubt says nothing of what is to be expected.
            Expected = best.Kind?.IsOfCounter() == true
                ? known.Counter?.Accounts.FirstOrDefault(c => c.Words == best.Words)?.Expected ?? expected
                : expected,
            ExpectedCounter = known.Counter?.Expected,
            IsCounterUnusual = known.Counter?.IsUnusual == true,
            Deviations = honest.Deviations,
            ProbabilityHonest =
                accounts.Where(a => a.Kind is null).Sum(a => Math.Exp(a.LogWeight - best.LogWeight)) / total,
            Slips = [.. accounts.Where(a => a.Kind is not null)
                .Select(a => a.ToSlip(Math.Exp(a.LogWeight - best.LogWeight) / total))
                .Where(slip => slip.Probability >= WorthTelling).OrderByDescending(slip => slip.Probability)],
        };
    }

    private static double LogCounter(Account account, CounterEvidence? counter) => counter is null ? 0
        : account.Kind == SlipKind.CounterReset ? counter.LogIfChanged
        : counter.LogHonest;

    /// <summary>
    /// What is offered instead: nothing where it is to be read again, the likeliest, or the two likeliest where they are near
    /// each other.
    /// </summary>
    public IReadOnlyList<Slip> Offered => ProbabilityHonest < DoubtBelow && TemperatureOff.IsEmpty
        ? [.. Slips.Where(s => !s.Kind.MeansReadAgain() && s.Probability > NearShare * Slips[0].Probability).Take(MostOffered)]
        : [];

    /// <summary>The one that is chosen beforehand; null where another explanation, or a misread figure, is near.</summary>
    public Slip? Chosen => Offered is [var only] && only == Slips[0]
        && (Slips is [_] || Slips[1].Probability <= NearShare * only.Probability) ? only : null;

    /// <summary>What to tell the person who entered it, in plain words; empty when it fits.</summary>
    public Phrase Question => !IsDoubted ? Phrase.None
        : !TemperatureOff.IsEmpty ? TemperatureOff
        : ProbabilityHonest >= DoubtBelow ? Phrase.Join(" ", [WhatDoesNotFit, HowFar, Again])
        : Phrase.Join(" ", [WhatDoesNotFit, Slips is [var likeliest, ..] ? Ask(likeliest) : Again]);

    /// <summary>How far it would move the swap, in plain words; empty where it does not move it far.</summary>
    public Phrase HowFar => !MovesFar ? Phrase.None
        : MovesEarlyDays > 0 ? Phrase.Of($"It would put off the swap by {HowManyDays}.")
        : $"It would bring the swap forward by {HowManyDays}.";

    private Phrase HowManyDays => Math.Abs(MovesEarlyDays) is var days && days > MostDaysToTell
        ? Phrase.Of($"years")
        : $"{days:0} days";

    private Phrase WhatDoesNotFit => Column is not ("length" or "temperature_c") && ExpectedCounter is { } counter ? counter.Words
        : $"{ElongationPercent:0.00} % does not fit: about {Expected.MeanPercent:0.00} % was expected.";

    private Phrase Ask(Slip first)
    {
        if (first.Kind == SlipKind.CounterWrong) return $"Please read the counter again.";
        if (first.Kind == SlipKind.Misread) return Again;
        var either = Offered is [_, var second] ? Phrase.Of($"{first.Words}; or {second.Words}") : first.Words;
        return first.Kind.IsOfCounter()
            ? Phrase.Of($"Was it {either}?")
            : $"Was it {either}? That would be {first.ElongationPercent:0.00} %.";
    }
}
