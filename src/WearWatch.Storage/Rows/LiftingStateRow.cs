using WearWatch.Lifting.Examinations;

namespace WearWatch.Storage.Rows;

/// <summary>What was concluded of a lifting chain from all that was told; made anew whenever something is told.</summary>
/// <remarks>What only the date decides, such as whether an examination is overdue, is decided when it is read.</remarks>
public sealed class LiftingStateRow
{
    public int ChainId { get; init; }

    public LiftingStanding Standing { get; set; }

    /// <summary>What stands against its use, whatever the date.</summary>
    public IReadOnlyList<LiftingFault> Faults { get; set; } = [];

    public bool HasCertificate { get; set; }

    /// <summary>When it was last looked at.</summary>
    public DateTimeOffset? LookedAt { get; set; }

    /// <summary>When its wear was last measured.</summary>
    public DateTimeOffset? MeasuredAt { get; set; }

    /// <summary>When it was last thoroughly examined.</summary>
    public DateOnly? ExaminedOn { get; set; }

    public DateOnly? ExaminationDue { get; set; }

    /// <summary>By when what an examiner found is to be put right.</summary>
    public DateOnly? RemedyBy { get; set; }

    /// <summary>The state as the domain knows it.</summary>
    public LiftingState ToState() => new()
    {
        Standing = Standing,
        Faults = Faults,
        HasCertificate = HasCertificate,
        LookedAt = LookedAt,
        MeasuredAt = MeasuredAt,
        ExaminedOn = ExaminedOn,
        ExaminationDue = ExaminationDue,
        RemedyBy = RemedyBy,
    };

    /// <summary>Takes over what was concluded.</summary>
    public void Take(LiftingState state)
    {
        (Standing, Faults, HasCertificate) = (state.Standing, state.Faults, state.HasCertificate);
        (LookedAt, MeasuredAt, ExaminedOn) = (state.LookedAt, state.MeasuredAt, state.ExaminedOn);
        (ExaminationDue, RemedyBy) = (state.ExaminationDue, state.RemedyBy);
    }
}
