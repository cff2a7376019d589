using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>
/// A reading of a chain that lifts or holds a load that is not used and would, if it is right, take the chain out of use: until a
/// person confirms, corrects or withdraws it, nobody can judge the chain, and it is not to be used.
/// </summary>
/// <remarks>
/// It waits for a person, or it is held back or taken for misread by the track and fewer than two readings that were used have
/// followed: one alone contradicts it, two answer it (common practice). Judged by the upper end of its own uncertainty
/// (two standard deviations), as any reading of such a chain; one that the gauge refuses, by its plain length. docs/safety.md.
/// </remarks>
public static class LiftingDoubt
{
    private const double MoreLikelyThanNot = 0.5;
    private const int Answers = 2;

    /// <summary>The assessment with what such a reading says: never milder than without it, and never judged before.</summary>
    /// <param name="chain">The assessment.</param>
    /// <param name="readings">The readings that it was made from, in their order.</param>
    /// <param name="waiting">Readings of the chain that wait for a person's word.</param>
    public static Assessment Govern(Assessment chain, IReadOnlyList<Reading> readings, IReadOnlyList<Reading> waiting)
    {
        if (!chain.Card.HoldsLoad || Worst(chain, readings, waiting) is not { } percent) return chain;
        Phrase said = $"A reading of {percent:0.00} % would reach the limit of {chain.Limit.Percent:0.0#} % and is in "
            + $"doubt. The chain cannot be judged until the reading is confirmed, corrected or withdrawn: do not use it.";
        var isJudged = chain.Condition is Condition.PlanASwap or Condition.SwapNow;
        return chain with
        {
            Condition = isJudged ? chain.Condition : Condition.NotKnown,
            WhyNotKnown = isJudged || !chain.WhyNotKnown.IsEmpty ? chain.WhyNotKnown : said,
            ReadingInDoubt = said,
            Notices =
            [
                .. chain.Notices.Where(n => n.Kind != NoticeKind.ReadingHeldBack),
                new Notice(NoticeKind.ReadingHeldBack, true, said,
                    $"Take it out of use. Measure again; then confirm, correct or withdraw it. {LiftingNotice.InDoubt}"),
            ],
        };
    }

    /// <summary>The elongation of the worst such reading of the chain that runs now, in percent; null for none.</summary>
    private static double? Worst(Assessment chain, IReadOnlyList<Reading> readings, IReadOnlyList<Reading> waiting)
    {
        var (card, limit) = (chain.Card, chain.Limit.Percent);
        var earlier = chain.History.Lives.SkipLast(1).Max(life => life.LastReadingIndex) ?? -1;
        var used = chain.Observations.Select(o => o.Observation.ReadingIndex).ToList();
        bool IsAnswered(int index) => used.Count(later => later > index) >= Answers;
        var fittedAt = chain.History.Current.FittedAt;
        var unused = chain.History.HeldBack.Where(h => h.ReadingIndex > earlier && !IsAnswered(h.ReadingIndex))
            .Select(h => readings[h.ReadingIndex])
            .Concat(waiting).Where(reading => !(reading.TakenAt < fittedAt));
        var misread = chain.Observations
            .Where(o => o.ProbabilityMisreadNow > MoreLikelyThanNot && o.Observation.ElongationPercent >= limit
                && !IsAnswered(o.Observation.ReadingIndex))
            .Select(o => (double?)o.Observation.ElongationPercent);
        return unused.Select(reading => Of(card, reading)).Where(found => found.Upper >= limit)
            .Select(found => (double?)found.Percent).Concat(misread).Max();
    }

    private static (double Percent, double Upper) Of(ChainCard card, Reading reading)
    {
        if (Gauge.Measure(
            card.PitchMm, reading.Pitches, reading.LengthMm, reading.Tool, reading.TemperatureC, reading.LengthUncertaintyMm)
            is GaugeOutcome.Measured { Elongation: var measured })
            return (measured.Percent, measured.Percent + 2 * measured.StandardUncertaintyPercent);
        var plain = 100 * (reading.LengthMm / (reading.Pitches * card.PitchMm) - 1);
        return double.IsFinite(plain) ? (plain, plain) : (0, 0);
    }
}
