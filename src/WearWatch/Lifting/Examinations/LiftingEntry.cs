using WearWatch.Chains;

namespace WearWatch.Lifting.Examinations;

/// <summary>What of a lifting chain's entry in the register decides on its state.</summary>
public sealed record LiftingEntry
{
    /// <summary>When the physical chain that it tells of was fitted; null where no fitting is recorded.</summary>
    public DateTimeOffset? FittedAt { get; init; }

    /// <summary>When the entry was written.</summary>
    public required DateTimeOffset WrittenAt { get; init; }

    /// <summary>What the law asks for; the region may not be set.</summary>
    public required IntervalCase Case { get; init; }

    /// <summary>The plant's own months between two thorough examinations.</summary>
    public int? Months { get; init; }

    /// <summary>Whether a written scheme of examination is on file.</summary>
    public bool HasWrittenScheme { get; init; }

    /// <summary>Whether a certificate is on record.</summary>
    public bool HasCertificate { get; init; }

    /// <summary>Whether it tells of the chain that runs since a moment; null for one without a recorded replacement.</summary>
    public bool IsOfChainSince(DateTimeOffset? replacedAt) => replacedAt is null || (FittedAt ?? WrittenAt) >= replacedAt;

    /// <summary>The interval, with the plant's region where the entry names none.</summary>
    public ExaminationInterval Interval(LawRegion plants) => ExaminationInterval.Of(
        Case.Region == LawRegion.NotSet ? Case with { Region = plants } : Case, Months, HasWrittenScheme);
}
