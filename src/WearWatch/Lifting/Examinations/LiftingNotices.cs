using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Lifting.Examinations;

/// <summary>What of a lifting chain's state asks for a person's attention, besides its wear.</summary>
public static class LiftingNotices
{
    /// <summary>The kinds that stay until their cause is gone: no person's judgement of a notice ends them.</summary>
    public static bool IsOne(NoticeKind kind) =>
        kind is NoticeKind.OutOfUse or NoticeKind.ExaminationDue or NoticeKind.PapersMissing;

    /// <summary>The notices on a day, at most one of a kind.</summary>
    /// <param name="state">The chain's state.</param>
    /// <param name="today">The plant's day.</param>
    public static IEnumerable<Notice> Of(LiftingState state, DateOnly today)
    {
        if (state.Standing == LiftingStanding.Disposed) yield break;
        var faults = state.On(today);
        // Wear at its limit has a notice of its own.
        if (Words(faults, kind => LiftingVerdicts.Of(kind) == LiftingVerdict.OutOfUse && kind != LiftingFaultKind.WearLimit)
            is { } stops)
            yield return new(NoticeKind.OutOfUse, Urgent: true, stops,
                $"Take it out of use, tag it, and have a competent person judge it. Only such a person releases it, by name.");
        if (Words(faults, IsOfExamination) is { } overdue)
            yield return new(NoticeKind.ExaminationDue, Urgent: true, overdue,
                $"Have a competent person examine it before further use.");
        else if (state.IsDueSoon(today))
            yield return new(NoticeKind.ExaminationDue, Urgent: false,
                $"The thorough examination is due by {state.ExaminationDue!.Value}.",
                $"Set a day with the examiner, and print the sheet. Little wear postpones nothing.");
        if (Words(faults, kind => kind is LiftingFaultKind.NoCertificate or LiftingFaultKind.NoInterval) is { } papers)
            yield return new(NoticeKind.PapersMissing, Urgent: false, papers,
                $"Enter them on the chain's lifting page; without them a competent person examines it before further use.");
    }

    private static bool IsOfExamination(LiftingFaultKind kind) =>
        kind is LiftingFaultKind.ExaminationOverdue or LiftingFaultKind.NeverExamined or LiftingFaultKind.ExaminedInPart;

    private static Phrase? Words(IReadOnlyList<LiftingFault> faults, Func<LiftingFaultKind, bool> which) =>
        Phrase.Join(" ", faults.Where(f => which(f.Kind)).Select(f => f.Words)) is { IsEmpty: false } words ? words : null;
}
