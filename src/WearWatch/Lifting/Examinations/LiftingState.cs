using System.Globalization;

namespace WearWatch.Lifting.Examinations;

/// <summary>The state of a lifting chain: the worst of wear, links, findings, reports, papers and dates.</summary>
/// <remarks>Nothing in it ever releases a chain: where nothing stands against its use, that is all that is said.</remarks>
public sealed record LiftingState
{
    /// <summary>Where it stands by what people did.</summary>
    public required LiftingStanding Standing { get; init; }

    /// <summary>What stands against its use whatever the date, worst first.</summary>
    public required IReadOnlyList<LiftingFault> Faults { get; init; }

    /// <summary>Whether a certificate of this physical chain is on record.</summary>
    public required bool HasCertificate { get; init; }

    /// <summary>When it was last looked at.</summary>
    public DateTimeOffset? LookedAt { get; init; }

    /// <summary>When its wear was last measured.</summary>
    public DateTimeOffset? MeasuredAt { get; init; }

    /// <summary>The day of the last thorough examination of the whole chain.</summary>
    public DateOnly? ExaminedOn { get; init; }

    /// <summary>The last day by which the next one is due; null where nothing says.</summary>
    public DateOnly? ExaminationDue { get; init; }

    /// <summary>By when what an examiner found is to be put right.</summary>
    public DateOnly? RemedyBy { get; init; }

    /// <summary>From how many days before its date on an examination is told ahead.</summary>
    public const int DaysAhead = 30;

    /// <summary>All that stands against its use on a day, worst first.</summary>
    public IReadOnlyList<LiftingFault> On(DateOnly today)
    {
        List<LiftingFault> all = [.. Faults];
        if (IsOverdue(today))
            all.Add(new(LiftingFaultKind.ExaminationOverdue,
                $"Examination overdue since {ExaminationDue!.Value}. A measurement does not replace it."));
        if (RemedyBy < today)
            all.Add(new(LiftingFaultKind.RemedyOverdue,
                $"What the examiner found was to be put right by {RemedyBy.Value}, and nobody has closed it."));
        return [.. all.OrderByDescending(f => LiftingVerdicts.Of(f.Kind)).ThenBy(f => f.Kind)];
    }

    /// <summary>Whether it is condemned, so that its whole set is replaced: discarded, or worn to its limit.</summary>
    public bool IsCondemned => Standing == LiftingStanding.Disposed
        || Faults.Any(f => f.Kind is LiftingFaultKind.WearLimit or LiftingFaultKind.LinkLimit);

    /// <summary>Whether the examination is overdue on a day.</summary>
    public bool IsOverdue(DateOnly today) => Standing != LiftingStanding.Disposed && ExaminationDue < today;

    /// <summary>Whether the examination falls due within <see cref="DaysAhead"/>, or is overdue.</summary>
    public bool IsDueSoon(DateOnly today) =>
        Standing != LiftingStanding.Disposed && ExaminationDue is { } due && due <= today.AddDays(DaysAhead);

    /// <summary>How bad the worst is on a day.</summary>
    public LiftingVerdict VerdictOn(DateOnly today) =>
        On(today) is [var worst, ..] ? LiftingVerdicts.Of(worst.Kind)
            : IsDueSoon(today) ? LiftingVerdict.Attend : LiftingVerdict.NothingStands;

    /// <summary>Concludes the state from all that was told.</summary>
    public static LiftingState Of(LiftingFacts facts, DateTimeOffset now) => new LiftingConclusion(facts, now).State();

    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
