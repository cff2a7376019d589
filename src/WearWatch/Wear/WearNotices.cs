using WearWatch.Chains;
using WearWatch.Phrases;
using WearWatch.Running;

namespace WearWatch.Wear;

/// <summary>What of an assessment asks for a person's attention: one notice of a kind, with the numbers that make it.</summary>
internal static class WearNotices
{
    private const double MoreLikelyThanNot = 0.5;

    public static IReadOnlyList<Notice> Of(Assessment chain, ProductionCalendar calendar, DateTimeOffset now) =>
        [.. new[]
        {
            Limit(chain, calendar, now),
            Shorten(chain, calendar, now),
            RateHasRisen(chain),
            MeasureAgain(chain),
            Hindsight(chain),
            HeldBack(chain),
            StrandsDiffer(chain),
        }.OfType<Notice>()];

    private static Notice? Limit(Assessment chain, ProductionCalendar calendar, DateTimeOffset now)
    {
        if (chain.Condition is not (Condition.SwapNow or Condition.PlanASwap)) return null;
        if (chain.Card.HoldsLoad) return LiftingNotice.Limit(chain);
        var passed = chain.Forecast.ProbabilityWithin(chain.HoursNow - chain.HoursAtLastReading);
        var isTakeUp = chain.Limit.Reason == LimitReason.TakeUpTravel;
        var kind = isTakeUp ? NoticeKind.TakeUpEnds : NoticeKind.LimitNear;
        var (now1, most) = (chain.ElongationPercent, chain.Limit.Percent);
        var state = isTakeUp ? Phrase.Of($"{now1:0.00} % of {most:0.0#} % allowed: then the take-up is at its end")
            : $"{now1:0.00} % of {most:0.0#} % allowed";
        if (chain.Condition == Condition.SwapNow)
        {
            return new(
                kind, true, $"{state}; probability that the limit is exceeded: {passed:P0}.",
                $"Fit a new chain, and inspect the sprockets.");
        }

        var early = chain.DateAt(5, calendar, now) is { } date
            ? Phrase.Of($"it may reach the limit from {date} on (one chance in twenty before)")
            : $"the limit may be passed already ({passed:P0})";
        return new(
            kind, false, $"{state}; {early}.",
            $"Plan a swap before that day, and order the chain.");
    }

    /// <summary>The take-up ends before the chain is worn: it is to be shortened, and goes on.</summary>
    private static Notice? Shorten(Assessment chain, ProductionCalendar calendar, DateTimeOffset now)
    {
        if (chain is not { TakeUp: { } takeUp, ElongationPercent: not null } || chain.Condition == Condition.SwapNow) return null;
        if (chain.ShortenAt(5, calendar, now) is not { } early || early > now + ConditionRule.PlanningLead) return null;
        var passed = takeUp.Forecast.ProbabilityWithin(chain.HoursNow - chain.HoursAtLastReading);
        var soon = early > now
            ? Phrase.Of($"it may be there from {early} on (one chance in twenty before)")
            : $"it may be there already ({passed:P0})";
        return new(
            NoticeKind.TakeUpEnds, passed >= MoreLikelyThanNot,
            $"{chain.ElongationPercent:0.00} % of the {takeUp.End.Percent:0.00} % at which the take-up is at its end; {soon}.",
            $"Take out {takeUp.End.PitchesToRemove} pitches and set the take-up back; join with a new connecting link. It need "
                + $"not be replaced for that.");
    }

    private static Notice? RateHasRisen(Assessment chain)
    {
        if (!(chain.View.ProbabilityRateRose > MoreLikelyThanNot)) return null;
        var (since, before) = RateRise.Of(chain);
        var now = chain.RatePercentPer1000Hours;
        return new(
            NoticeKind.RateHasRisen, false,
            $"It wears at {now:0.00} % in 1,000 h, {now / before:0.0} times the {before:0.00} % before, "
                + $"since about {since:#,0} running hours (probability {chain.View.ProbabilityRateRose:P0}).",
            $"Look for the cause: oil, dust, load, alignment. Measure again soon.");
    }

    private static Notice? MeasureAgain(Assessment chain)
    {
        if (!(chain.View.ProbabilityLastMisread > MoreLikelyThanNot)) return null;
        var last = chain.Observations[^1].Observation;
        return new(
            NoticeKind.MeasureAgain, false,
            $"The last reading, {last.ElongationPercent:0.00} % at {last.HoursSinceFitting:#,0} running hours, does not "
                + $"fit the wear history "
                + $"({chain.ElongationPercent:0.00} %); it is misread with probability "
                + $"{chain.View.ProbabilityLastMisread:P0}.",
            chain.Card.HoldsLoad
                ? Phrase.Of(
                    $"Measure again: count the pitches, set the tape at pin centres. Until then the higher figure counts.")
                : $"Measure again: count the pitches, set the tape at pin centres.");
    }

    private static Notice? Hindsight(Assessment chain)
    {
        if (chain.Observations.LastOrDefault(o => o.IsDoubtedInHindsight) is not { } doubted) return null;
        return new(
            NoticeKind.EarlierReadingDoubted, false,
            $"The reading of {doubted.Observation.ElongationPercent:0.00} % at {doubted.Observation.HoursSinceFitting:#,0} "
                + $"running "
                + $"hours does not fit those after it; it was misread with probability {doubted.ProbabilityMisreadNow:P0}.",
            $"Check it: correct or withdraw it if it was a slip. It counts little until then.");
    }

    private static Notice? HeldBack(Assessment chain)
    {
        if (!chain.WhyNotKnown.IsEmpty)
        {
            return new(NoticeKind.ReadingHeldBack, true, chain.WhyNotKnown,
                $"Correct or withdraw that reading on the chain's page, or measure again.");
        }

        // A reading that later ones have followed has had its answer.
        var lastUsed = chain.Observations.Count > 0 ? chain.Observations[^1].Observation.ReadingIndex : -1;
        var held = chain.History.HeldBack.Where(h => h.ReadingIndex > lastUsed).ToList();
        if (held.Count == 0) return null;
        var (last, offers) = (held[^1], held[^1].Corrections);
        return new(
            NoticeKind.ReadingHeldBack, chain.Card.HoldsLoad,
            held.Count == 1 ? last.Reason : Phrase.Of($"{held.Count} readings wait; the last: {last.Reason}"),
            Phrase.Join(" ",
            [
                offers.Count > 0 ? Phrase.Of($"Correct it ({Phrase.Join("; ", offers)}), or measure again.")
                    : $"Correct it, or measure again.",
                chain.Card.HoldsLoad ? LiftingNotice.InDoubt : Phrase.None,
            ]));
    }

    private static Notice? StrandsDiffer(Assessment chain) => chain.History.Current.Strands is { IsUneven: true } strands
        ? new(
            NoticeKind.StrandsDiffer, false,
            $"Strand {strands.MostStrand} is at {strands.Most.Percent:0.00} %, strand {strands.LeastStrand} at "
                + $"{strands.Least.Percent:0.00} %: {strands.DifferencePercent:0.00} % apart, where their uncertainty "
                + $"explains "
                + $"{strands.ExplainedPercent:0.00}. The worst strand governs.",
            $"Check the alignment of shafts and sprockets, and that all strands get oil.")
        : null;
}
