namespace WearWatch.Lifting.Examinations;

/// <summary>Why a lifting chain is not as it should be, in order of what hurts first.</summary>
public enum LiftingFaultKind
{
    /// <summary>It was discarded.</summary>
    Disposed,

    /// <summary>Somebody took it out of use.</summary>
    Quarantined,

    /// <summary>Something was found that stops it, and no competent person has released it.</summary>
    StopFinding,

    /// <summary>An examiner's report takes it out of use.</summary>
    ReportOutOfUse,

    /// <summary>Its wear may have reached the limit.</summary>
    WearLimit,

    /// <summary>A measure of its links has reached a limit.</summary>
    LinkLimit,

    /// <summary>Its thorough examination is overdue.</summary>
    ExaminationOverdue,

    /// <summary>What an examiner wanted put right by a date has not been closed.</summary>
    RemedyOverdue,

    /// <summary>No thorough examination is recorded.</summary>
    NeverExamined,

    /// <summary>The examiner could not examine all points.</summary>
    ExaminedInPart,

    /// <summary>No certificate is recorded.</summary>
    NoCertificate,

    /// <summary>The register does not say which law's interval counts.</summary>
    NoInterval,

    /// <summary>Its wear was never measured, or cannot be judged.</summary>
    WearNotKnown,

    /// <summary>Another chain of its set is condemned: the whole set is replaced.</summary>
    SetCondemned,

    /// <summary>A reading that would take it out of use waits for a person's word: until then it cannot be judged.</summary>
    ReadingInDoubt,

    /// <summary>Another chain of its set was replaced and this one was not: old and new run together.</summary>
    SetMixed,
}
