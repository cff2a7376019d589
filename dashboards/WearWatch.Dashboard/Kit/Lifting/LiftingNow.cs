using WearWatch.Criteria;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Kit.Lifting;

/// <summary>What every screen says of a chain that lifts, beside its name.</summary>
/// <param name="Verdict">How bad the worst is.</param>
/// <param name="Brief">The worst in a few words.</param>
/// <param name="Words">All that stands against its use, in sentences.</param>
/// <param name="Due">What is said of its examination.</param>
public sealed record LiftingNow(LiftingVerdict Verdict, Phrase Brief, IReadOnlyList<Phrase> Words, Phrase Due)
{
    private const int BriefFaults = 2;

    /// <summary>The colour and shape of its mark, as a class of the style sheet. None of them is green.</summary>
    public string Style => Verdict switch
    {
        LiftingVerdict.OutOfUse => "lift-out",
        LiftingVerdict.ExamineFirst => "lift-examine",
        LiftingVerdict.Attend => "lift-attend",
        _ => "lift-plain",
    };

    /// <summary>What is said of a chain on a day.</summary>
    /// <param name="state">Its state.</param>
    /// <param name="outOfUseBy">The last moment that its wear leaves it; null for none.</param>
    /// <param name="time">The plant's time.</param>
    public static LiftingNow Of(LiftingState state, DateTimeOffset? outOfUseBy, PlantTime time)
    {
        var (faults, verdict) = (state.On(time.Today), state.VerdictOn(time.Today));
        var byWear = outOfUseBy is { } at
            ? Phrase.Of($"Out of use by {time.DateOf(at)} at the latest: the wear sets that day.")
            : Phrase.None;
        // Within the longest time that a competent person may set beyond the attention mark the day is near.
        var isNear = outOfUseBy <= time.Now.AddMonths((int)LiftingCriteria.ValueOf("leaf-length-plan-months"));
        if (verdict == LiftingVerdict.NothingStands && isNear) verdict = LiftingVerdict.Attend;
        return new LiftingNow(
            verdict, BriefOf(state, faults, isNear ? outOfUseBy : null, verdict, time),
            [
                .. faults.Select(f => Phrase.Of($"{f.Words}")),
                .. byWear.IsEmpty || verdict == LiftingVerdict.OutOfUse ? Array.Empty<Phrase>() : [byWear],
            ], DueOf(state.ExaminationDue, time.Today));
    }

    private static Phrase DueOf(DateOnly? due, DateOnly today) => due switch
    {
        null => $"Thorough examination: no date.",
        { } day when day < today => $"Thorough examination overdue since {day}.",
        { } day => $"Thorough examination due by {day}.",
    };

    private static Phrase BriefOf(
        LiftingState state, IReadOnlyList<LiftingFault> faults, DateTimeOffset? outOfUseBy, LiftingVerdict verdict,
        PlantTime time)
    {
        if (verdict == LiftingVerdict.OutOfUse) return $"{LiftingVerdicts.Words(verdict)}";
        if (faults.Count > 0)
            return Phrase.Join(", ", faults.Take(BriefFaults).Select(f => Phrase.Of($"{LiftingVerdicts.Brief(f.Kind)}")));
        if (outOfUseBy is { } at) return $"out of use by {time.DateOf(at)}";
        return verdict == LiftingVerdict.Attend ? Phrase.Of($"examination by {state.ExaminationDue!.Value}") : $"lifts";
    }
}
