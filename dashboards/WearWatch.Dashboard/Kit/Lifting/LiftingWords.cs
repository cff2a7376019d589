using WearWatch.Chains;
using WearWatch.Lifting.Examinations;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Kit.Lifting;

/// <summary>The register of lifting chains in the words of screens and papers.</summary>
public static class LiftingWords
{
    /// <summary>What stands against a chain's use, line by line, for a paper.</summary>
    public static IReadOnlyList<string> Lines(LiftingNow now) =>
        [T[LiftingVerdicts.Words(now.Verdict)] + ".", .. now.Words.Select(words => T[words]), T[now.Due]];

    public static string Of(LawRegion region) => region switch
    {
        LawRegion.EuropeanUnion => T["European Union"],
        LawRegion.UnitedKingdom => T["United Kingdom"],
        LawRegion.Germany => T["Germany"],
        LawRegion.France => T["France"],
        LawRegion.UnitedStates => T["United States (federal)"],
        LawRegion.Australia => T["Australia"],
        _ => T["not said"],
    };

    public static string Of(LiftingUse use) => use switch
    {
        LiftingUse.Truck => T["truck mast, boom or counterweight"],
        LiftingUse.Hoist => T["hoist"],
        _ => T["sling under the hook"],
    };

    public static string Of(ExaminationOccasion occasion) => occasion switch
    {
        ExaminationOccasion.Initial => T["before first use"],
        ExaminationOccasion.Exceptional => T["after an exceptional event"],
        ExaminationOccasion.AfterRepair => T["after repair or alteration"],
        ExaminationOccasion.AfterIdleness => T["after long idleness"],
        _ => T["periodic"],
    };

    public static string Of(ExaminationResult result) => result switch
    {
        ExaminationResult.NothingFound => T["all points examined, nothing found"],
        ExaminationResult.RemedyByDate => T["defect, to be put right by a date"],
        ExaminationResult.OutOfUse => T["defect, out of use at once"],
        _ => T["not all points examined"],
    };

    public static string Of(PointOutcome outcome) => outcome switch
    {
        PointOutcome.NothingFound => T["examined, nothing found"],
        PointOutcome.Found => T["found"],
        _ => T["not examined"],
    };

    public static string Of(LiftingStepKind step) => step switch
    {
        LiftingStepKind.Quarantined => T["Quarantined"],
        LiftingStepKind.Released => T["Released"],
        _ => T["Discarded"],
    };

    public static string Of(LiftingFileKind kind) => kind switch
    {
        LiftingFileKind.Certificate => T["certificate"],
        LiftingFileKind.ProofTest => T["proof test"],
        LiftingFileKind.WrittenScheme => T["written scheme of examination"],
        _ => T["report of an examination"],
    };
}
