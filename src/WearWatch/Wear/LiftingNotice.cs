using WearWatch.Chains;
using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>What a chain that lifts or holds a load asks for when its wear comes to a limit: a competent person.</summary>
/// <remarks>Sources: docs/references.md [22], [30]; docs/safety.md.</remarks>
internal static class LiftingNotice
{
    /// <summary>Where it cannot be judged.</summary>
    public static Phrase InDoubt { get; } = $"Until then it cannot be judged: a competent person examines it before further use.";

    private static readonly Phrase Whole =
        $"The whole chain is replaced, the chains of a pair or set together, with their anchors, pins and fittings.";

    /// <summary>The notice of a chain at or near its limit.</summary>
    public static Notice Limit(Assessment chain)
    {
        var mark = chain.Limit.PlanFromPercent;
        var isMarked = chain.LiftingUpperPercent >= mark;
        Phrase state = $"{chain.ElongationPercent:0.00} %, at most {chain.LiftingUpperPercent:0.00} %, "
            + $"of {chain.Limit.Percent:0.0#} % ({SourceWords.Of(chain.Limit.Source)})";
        if (chain.Condition == Condition.SwapNow)
        {
            var passed = chain.Forecast.ProbabilityWithin(chain.HoursNow - chain.HoursAtLastReading);
            return new(
                NoticeKind.LimitNear, true,
                $"{state}: the limit may be reached (probability {passed:P0}), or the time "
                    + $"set beyond the planning mark has run out.",
                $"Take it out of use now: lower the load, block it, tag the chain. A competent person judges it. {Whole}");
        }

        var reached = isMarked ? Phrase.Of($"; the planning mark of {mark:0.0#} % is reached") : Phrase.None;
        var until = chain.OutOfUseBy is { } day ? Phrase.Of($"; out of use from {day} at the latest") : Phrase.None;
        return new(
            NoticeKind.LimitNear, isMarked, $"{state}{reached}{until}.",
            $"A competent person sets the date, at the latest that day; no forecast and no plan moves it. {Whole}");
    }
}
