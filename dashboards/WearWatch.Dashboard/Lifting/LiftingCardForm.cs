using System.Globalization;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Lifting.Examinations;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Lifting;

/// <summary>What a person fills in of a lifting chain's entry.</summary>
public sealed class LiftingCardForm
{
    public FormValues Faults { get; } = new();

    public long? Basis { get; init; }

    public LiftingUse Use { get; set; }

    public string WorkingLoadKg { get; set; } = "";

    public string WorkingLoadOf { get; set; } = "";

    public string CertificateNumber { get; set; } = "";

    public DateOnly? CertificateOn { get; set; }

    public string CertificateFile { get; set; } = "";

    public DateOnly? ProofTestOn { get; set; }

    public string ProofLoadKg { get; set; } = "";

    public string ProofTestNumber { get; set; } = "";

    public string Maker { get; set; } = "";

    public string Standard { get; set; } = "";

    public string Grade { get; set; } = "";

    public string TraceMark { get; set; } = "";

    public string ChainSet { get; set; } = "";

    public LawRegion Region { get; set; }

    public bool LiftsPersons { get; set; }

    public bool HeavyUse { get; set; }

    public string LiftsPerWeek { get; set; } = "";

    public string ExaminationMonths { get; set; } = "";

    public string WrittenScheme { get; set; } = "";

    public string WrittenSchemeFile { get; set; } = "";

    public string Why { get; set; } = "";

    public string By { get; set; } = "";

    /// <summary>The form with what stands there.</summary>
    public static LiftingCardForm Of(LiftingCardRow? card) => card is null ? new() : new()
    {
        Basis = card.Id,
        Use = card.Use,
        WorkingLoadKg = TypedNumber.Text(card.WorkingLoadKg),
        WorkingLoadOf = card.WorkingLoadOf,
        CertificateNumber = card.CertificateNumber,
        CertificateOn = card.CertificateOn,
        CertificateFile = Text(card.CertificateFileId),
        ProofTestOn = card.ProofTestOn,
        ProofLoadKg = TypedNumber.Text(card.ProofLoadKg),
        ProofTestNumber = card.ProofTestNumber,
        Maker = card.Maker,
        Standard = card.Standard,
        Grade = card.Grade,
        TraceMark = card.TraceMark,
        ChainSet = card.ChainSet,
        Region = card.Region,
        LiftsPersons = card.LiftsPersons,
        HeavyUse = card.HeavyUse,
        LiftsPerWeek = Text(card.LiftsPerWeek),
        ExaminationMonths = Text(card.ExaminationMonths),
        WrittenScheme = card.WrittenScheme,
        WrittenSchemeFile = Text(card.WrittenSchemeFileId),
    };

    /// <summary>The case that the region's rule is asked with.</summary>
    public IntervalCase Case(LawRegion plants) => new(
        Region == LawRegion.NotSet ? plants : Region, Use, LiftsPersons, HeavyUse,
        TypedNumber.WholeOf(LiftsPerWeek));

    /// <summary>The entry as far as it can be read; <see cref="Faults"/> says what cannot.</summary>
    public LiftingCardRow Read(string key, string by)
    {
        Faults.Clear();
        return new LiftingCardRow
        {
            Key = key,
            By = by,
            Why = Why,
            Use = Use,
            WorkingLoadKg = Faults.Number("working_load_kg", WorkingLoadKg),
            WorkingLoadOf = WorkingLoadOf,
            CertificateNumber = CertificateNumber,
            CertificateOn = CertificateOn,
            CertificateFileId = Faults.Whole("certificate_file", CertificateFile),
            ProofTestOn = ProofTestOn,
            ProofLoadKg = Faults.Number("proof_load_kg", ProofLoadKg),
            ProofTestNumber = ProofTestNumber,
            Maker = Maker,
            Standard = Standard,
            Grade = Grade,
            TraceMark = TraceMark,
            ChainSet = ChainSet,
            Region = Region,
            LiftsPersons = LiftsPersons,
            HeavyUse = HeavyUse,
            LiftsPerWeek = Faults.Whole("lifts_per_week", LiftsPerWeek),
            ExaminationMonths = Faults.Whole("examination_months", ExaminationMonths),
            WrittenScheme = WrittenScheme,
            WrittenSchemeFileId = Faults.Whole("written_scheme", WrittenSchemeFile),
        };
    }

    private static string Text(long? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";
}
