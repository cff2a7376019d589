using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Lifting.Examinations;

namespace WearWatch.Dashboard.Engineer.Report;

/// <summary>What a report says of the chains that lift: all against which something stands, by name.</summary>
internal static class MonthLifting
{
    /// <summary>The part of the report; none where no chain lifts.</summary>
    public static IEnumerable<ReportPart> Parts(LiftingStatesView lifting)
    {
        if (lifting.ByChain.Count == 0) yield break;
        var quiet = lifting.ByChain.Count(c => c.Value.Verdict == LiftingVerdict.NothingStands);
        var standing = lifting.ByChain.Where(c => c.Value.Verdict != LiftingVerdict.NothingStands)
            .OrderByDescending(c => c.Value.Verdict).ThenBy(c => c.Key, StringComparer.Ordinal).ToList();
        yield return new ReportPart(
            T["Lifting chains"],
            [
                T[$"{Caution.LiftingInBrief} {Caution.WhoDecides}"],
                T[$"{LiftingVerdicts.Words(LiftingVerdict.NothingStands)}: {EngineerWords.Chains(quiet)}."],
            ],
            standing.Count == 0 ? null : new ReportTable(
                [T["Chain"], T["State"], T["What stands against it"]],
                [
                    .. standing.Select(c =>
                        new[]
                        {
                            c.Key, T[$"{LiftingVerdicts.Words(c.Value.Verdict)}"],
                            T[Phrase.Join(" ", c.Value.Words.Select(w => Phrase.Of($"{w}")))],
                        }),
                ],
                Words: true));
    }
}
