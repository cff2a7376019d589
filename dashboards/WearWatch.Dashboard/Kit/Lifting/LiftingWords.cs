using WearWatch.Chains;
using WearWatch.Lifting.Examinations;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Kit.Lifting;

/// <summary>The register of lifting chains in the words of screens and papers.</summary>
public static class LiftingWords
{
    /// <summary>What stands against a chain's use, line by line, for a paper.</summary>
    public static IReadOnlyList<string> Lines(LiftingNow now) =>
        [LiftingVerdicts.Words(now.Verdict) + ".", .. now.Words, now.Due];

    public static string Of(LawRegion region) => region switch
    {
        LawRegion.EuropeanUnion => "European Union",
        LawRegion.UnitedKingdom => "United Kingdom",
        LawRegion.Germany => "Germany",
        LawRegion.France => "France",
        LawRegion.UnitedStates => "United States (federal)",
        LawRegion.Australia => "Australia",
        _ => "not said",
    };

    public static string Of(LiftingUse use) => use switch
    {
        LiftingUse.Truck => "truck mast, boom or counterweight",
        LiftingUse.Hoist => "hoist",
        _ => "sling under the hook",
    };

    public static string Of(ExaminationOccasion occasion) => occasion switch
    {
        ExaminationOccasion.Initial => "before first use",
        ExaminationOccasion.Exceptional => "after an exceptional event",
        ExaminationOccasion.AfterRepair => "after repair or alteration",
        ExaminationOccasion.AfterIdleness => "after long idleness",
        _ => "periodic",
    };

    public static string Of(ExaminationResult result) => result switch
    {
        ExaminationResult.NothingFound => "all points examined, nothing found",
        ExaminationResult.RemedyByDate => "defect, to be put right by a date",
        ExaminationResult.OutOfUse => "defect, out of use at once",
        _ => "not all points examined",
    };

    public static string Of(PointOutcome outcome) => outcome switch
    {
        PointOutcome.NothingFound => "examined, nothing found",
        PointOutcome.Found => "found",
        _ => "not examined",
    };

    public static string Of(LiftingStepKind step) => step switch
    {
        LiftingStepKind.Quarantined => "Quarantined",
        LiftingStepKind.Released => "Released",
        _ => "Discarded",
    };

    public static string Of(LiftingFileKind kind) => kind switch
    {
        LiftingFileKind.Certificate => "certificate",
        LiftingFileKind.ProofTest => "proof test",
        LiftingFileKind.WrittenScheme => "written scheme of examination",
        _ => "report of an examination",
    };
}
