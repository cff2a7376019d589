using WearWatch.Chains;
using WearWatch.Lifting.Examinations;

namespace WearWatch.Storage.Rows;

/// <summary>
/// What the register of lifting chains says of one, as somebody wrote it. Rows are only ever added; the newest counts.
/// </summary>
public sealed class LiftingCardRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Given by whoever sends it: sent twice, it is stored once.</summary>
    public required string Key { get; init; }

    public DateTimeOffset At { get; init; }

    public required string By { get; init; }

    /// <summary>Why it was changed, or empty for the first.</summary>
    public string Why { get; init; } = "";

    /// <summary>
    /// When the physical chain that it tells of was fitted; null where no fitting is recorded. A new chain needs a certificate of
    /// its own.
    /// </summary>
    public DateTimeOffset? FittedAt { get; init; }

    public LiftingUse Use { get; init; }

    /// <summary>What may hang on it, in kilograms, as its certificate says.</summary>
    public double? WorkingLoadKg { get; init; }

    /// <summary>For which arrangement that holds, such as one chain, the pair, one leg.</summary>
    public string WorkingLoadOf { get; init; } = "";

    public string CertificateNumber { get; init; } = "";

    public DateOnly? CertificateOn { get; init; }

    /// <summary>The scanned certificate.</summary>
    public long? CertificateFileId { get; init; }

    public DateOnly? ProofTestOn { get; init; }

    public double? ProofLoadKg { get; init; }

    public string ProofTestNumber { get; init; } = "";

    public string Maker { get; init; } = "";

    /// <summary>The standard and grade, such as EN 818-7 T.</summary>
    public string Standard { get; init; } = "";

    public string Grade { get; init; } = "";

    /// <summary>The mark that tells it from others of its kind.</summary>
    public string TraceMark { get; init; } = "";

    /// <summary>The chains of one name are one set: condemned together, replaced together. Empty for none.</summary>
    public string ChainSet { get; init; } = "";

    /// <summary>Whose law sets the interval; <see cref="LawRegion.NotSet"/> for the plant's.</summary>
    public LawRegion Region { get; init; }

    public bool LiftsPersons { get; init; }

    /// <summary>Heavy use by the words of the region's rule, such as over 40 h a week.</summary>
    public bool HeavyUse { get; init; }

    public int? LiftsPerWeek { get; init; }

    /// <summary>Months between two thorough examinations; null for what the region's rule says.</summary>
    public int? ExaminationMonths { get; init; }

    /// <summary>The written scheme of examination that is on file: its number, who made it, its date. Empty for none.</summary>
    public string WrittenScheme { get; init; } = "";

    public long? WrittenSchemeFileId { get; init; }

    /// <summary>What of it decides on the state. A certificate has a number or a scan; a scheme is on file as a scan.</summary>
    public LiftingEntry ToEntry() => new()
    {
        FittedAt = FittedAt,
        WrittenAt = At,
        Case = new IntervalCase(Region, Use, LiftsPersons, HeavyUse, LiftsPerWeek),
        Months = ExaminationMonths,
        HasWrittenScheme = WrittenSchemeFileId is not null,
        HasCertificate = CertificateNumber.Length > 0 || CertificateFileId is not null,
    };
}
