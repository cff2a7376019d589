using WearWatch.Phrases;

namespace WearWatch.Lifting.Examinations;

/// <summary>How bad each fault is, and its words.</summary>
public static class LiftingVerdicts
{
    /// <summary>How bad a fault is.</summary>
    public static LiftingVerdict Of(LiftingFaultKind kind) => kind switch
    {
        LiftingFaultKind.Disposed or LiftingFaultKind.Quarantined or LiftingFaultKind.StopFinding
            or LiftingFaultKind.ReportOutOfUse or LiftingFaultKind.WearLimit or LiftingFaultKind.LinkLimit
            or LiftingFaultKind.RemedyOverdue or LiftingFaultKind.SetCondemned
            or LiftingFaultKind.ReadingInDoubt => LiftingVerdict.OutOfUse,
        LiftingFaultKind.ExaminationOverdue or LiftingFaultKind.NeverExamined or LiftingFaultKind.ExaminedInPart
            or LiftingFaultKind.NoCertificate or LiftingFaultKind.SetMixed => LiftingVerdict.ExamineFirst,
        LiftingFaultKind.NoInterval or LiftingFaultKind.WearNotKnown => LiftingVerdict.Attend,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such fault."),
    };

    /// <summary>A fault in a few words, for a mark beside the chain's name.</summary>
    public static Phrase Brief(LiftingFaultKind kind) => kind switch
    {
        LiftingFaultKind.ExaminationOverdue => $"examination overdue",
        LiftingFaultKind.NeverExamined => $"never examined",
        LiftingFaultKind.ExaminedInPart => $"examined in part",
        LiftingFaultKind.NoCertificate => $"no certificate",
        LiftingFaultKind.NoInterval => $"no interval set",
        LiftingFaultKind.WearNotKnown => $"wear not known",
        LiftingFaultKind.SetMixed => $"old and new in one set",
        _ => $"out of use",
    };

    /// <summary>The verdict in words, for every screen and paper.</summary>
    public static Phrase Words(LiftingVerdict verdict) => verdict switch
    {
        LiftingVerdict.OutOfUse => $"Out of use",
        LiftingVerdict.ExamineFirst => $"Competent person to examine before further use",
        LiftingVerdict.Attend => $"Attend to it",
        _ => $"Nothing stands against it here; not a release for use",
    };
}
