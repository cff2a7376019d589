using System.Globalization;
using WearWatch.Chains;
using WearWatch.Gauging;

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

    private const string Again = "Please measure again.";

    /// <summary>The elongation as entered, in percent.</summary>
    public required double ElongationPercent { get; init; }

    /// <summary>What was expected.</summary>
    public required Expectation Expected { get; init; }

    /// <summary>Probability that the reading is what it says.</summary>
    public required double ProbabilityHonest { get; init; }

    /// <summary>The slips that would explain it, likeliest first.</summary>
    public required IReadOnlyList<Slip> Slips { get; init; }

    /// <summary>Whether it should wait for a person's word before it moves a forecast.</summary>
    public bool IsDoubted => ProbabilityHonest < DoubtBelow;

    /// <summary>How many standard deviations it lies off, the scatter of the gauge included; negative when too short.</summary>
    public required double Deviations { get; init; }

    /// <summary>Weighs an entry.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="entry">The reading as entered; one that the gauge does not refuse.</param>
    /// <param name="expected">What the track expects of the chain at that moment.</param>
    /// <param name="alternatives">What else is known.</param>
    /// <exception cref="ArgumentException">The gauge refuses the entry: then there is nothing to weigh.</exception>
    public static EntryDoubt Of(ChainCard card, Reading entry, Expectation expected, Alternatives? alternatives = null)
    {
        var honest = Account.Honest(card, entry, expected);
        List<Account> accounts =
        [
            honest,
            Account.RateRose(card, entry, expected),
            .. SlipsOfEntry.For(card, entry, expected, alternatives ?? Alternatives.Unknown),
        ];
        var best = accounts.Max(a => a.LogWeight);
        var total = accounts.Sum(a => Math.Exp(a.LogWeight - best));
        return new EntryDoubt
        {
            ElongationPercent = honest.ElongationPercent,
            Expected = expected,
            Deviations = honest.Deviations,
            ProbabilityHonest = accounts.Where(a => a.Kind is null).Sum(a => Math.Exp(a.LogWeight - best)) / total,
            Slips = [.. accounts.Where(a => a.Kind is not null).Select(a => a.ToSlip(Math.Exp(a.LogWeight - best) / total))
                .Where(slip => slip.Probability >= WorthTelling).OrderByDescending(slip => slip.Probability)],
        };
    }

    /// <summary>What to tell the person who entered it, in plain words; empty when it fits.</summary>
    public string Question => !IsDoubted ? "" : string.Create(CultureInfo.InvariantCulture,
        $"{ElongationPercent:0.00} % does not fit: about {Expected.MeanPercent:0.00} % was expected. "
        + $"{(Slips is [var likeliest, ..] ? Ask(likeliest) : Again)}");

    private static string Ask(Slip slip) => slip.Kind == SlipKind.Misread
        ? Again
        : string.Create(CultureInfo.InvariantCulture, $"Was it {slip.Words}? That would be {slip.ElongationPercent:0.00} %.");
}
