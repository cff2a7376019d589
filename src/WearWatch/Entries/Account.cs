using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Entries;

/// <summary>One account of how a reading came about, with its weight.</summary>
internal sealed record Account
{
    /// <summary>
    /// Share of readings that are entered as they were measured and measured as they should be. Common practice.
    /// </summary>
    internal const double HonestShare = 0.95;

    /// <summary>Share of honest readings before which the wear rate jumped up. Common practice.</summary>
    private const double RateRoseShare = 0.03;

    /// <summary>The slip; null for a reading that is what it says.</summary>
    public required SlipKind? Kind { get; init; }

    public required Phrase Words { get; init; }

    public required string Chain { get; init; }

    public required int Pitches { get; init; }

    public required double LengthMm { get; init; }

    public double? CounterH { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public required double ElongationPercent { get; init; }

    public required double Deviations { get; init; }

    /// <summary>ln of share times probability density, the density in percent of elongation.</summary>
    public required double LogWeight { get; init; }

    public static Account Honest(ChainCard card, Reading entry, Expectation expected) =>
        Of(null, Phrase.None, HonestShare * (1 - RateRoseShare), card, entry, entry.Pitches, entry.LengthMm, expected)
        ?? throw new ArgumentException("The gauge refuses this reading; there is nothing to weigh.", nameof(entry));

    /// <summary>The reading is what it says, and the chain has begun to wear faster: bad news is no slip.</summary>
    public static Account RateRose(ChainCard card, Reading entry, Expectation expected) => Honest(card, entry, expected) with
    {
        LogWeight =
            Of(null, Phrase.None, HonestShare * RateRoseShare, card, entry, entry.Pitches, entry.LengthMm, expected.IfRateRose())!
                .LogWeight,
    };

    /// <summary>
    /// The counter or the date is another. Whatever the length may be is weighed at those hours: as it says, misread, of a new
    /// chain, or wrong altogether. Else a length that fits nowhere would speak for the counter that leaves all open.
    /// </summary>
    public static Account OfCounter(ChainCard card, CounterAccount counter, Expectation expected, Alternatives known)
    {
        var then = counter.Expected ?? expected;
        var entry = counter.Entry;
        var honest = Honest(card, entry, then);
        Account?[] lengths =
        [
            honest, RateRose(card, entry, then), .. SlipsOfEntry.For(card, entry, then, known with { OtherChains = [] }),
        ];
        return honest with
        {
            Kind = counter.Kind,
            Words = counter.Words,
            LogWeight = counter.LogWeight + Math.Log(lengths.Sum(a => a is null ? 0 : Math.Exp(a.LogWeight))),
        };
    }

    /// <summary>An account of a slip; null when its correction would be no measurement at all.</summary>
    public static Account? Of(
        SlipKind? kind, Phrase words, double share, ChainCard card, Reading entry, int pitches, double lengthMm,
        Expectation expected, double spreadPercent = 0)
    {
        var elongation = Gauge.Measure(card.PitchMm, pitches, lengthMm, entry.Tool, entry.TemperatureC) switch
        {
            GaugeOutcome.Measured measured => measured.Elongation,
            GaugeOutcome.Doubted doubted => doubted.Elongation,
            _ => (Elongation?)null,
        };
        if (elongation is not { } e) return null;
        var deviation = Math.Sqrt(Square(expected.StandardDeviationPercent) + Square(e.ScatterPercent) + Square(spreadPercent));
        var off = (e.Percent - expected.MeanPercent) / deviation;
        return new Account
        {
            Kind = kind,
            Words = words,
            Chain = card.Name,
            Pitches = pitches,
            LengthMm = lengthMm,
            CounterH = entry.Counter?.Hours,
            TakenAt = entry.TakenAt,
            ElongationPercent = e.Percent,
            Deviations = off,
            LogWeight = Math.Log(share) - 0.5 * off * off - Math.Log(deviation),
        };
    }

    private static double Square(double x) => x * x;

    public Slip ToSlip(double probability) => new(Kind ?? SlipKind.Misread, probability, ElongationPercent, Words)
    {
        Pitches = Pitches,
        LengthMm = LengthMm,
        CounterH = CounterH,
        TakenAt = TakenAt,
        Chain = Chain,
    };
}
