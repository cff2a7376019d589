using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Inspections;

namespace WearWatch.Lifting.Examinations;

/// <summary>A finding that takes a lifting chain out of use and that no competent person has closed.</summary>
/// <param name="Point">The point of the checklist.</param>
/// <param name="Since">When it was found first.</param>
/// <param name="By">Who found it first.</param>
/// <param name="Note">What was written of it last, or empty.</param>
public sealed record StopFinding(CheckPoint Point, DateTimeOffset Since, string By, string Note)
{
    /// <summary>The findings that stand.</summary>
    /// <remarks>
    /// A later look that finds the point in order closes nothing, and a finding that was told after a release was not known to
    /// the one who gave it: both stand until a competent person closes them by name. A new chain begins without what was found on
    /// the old one, save what stays with the machine.
    /// </remarks>
    /// <param name="card">The chain.</param>
    /// <param name="found">All that was found on it.</param>
    /// <param name="steps">What people did about its use.</param>
    /// <param name="replacedAt">When the chain that runs now replaced another; null where that is not recorded.</param>
    public static IReadOnlyList<StopFinding> Standing(
        ChainCard card, IReadOnlyList<LiftingFinding> found, IReadOnlyList<LiftingStep> steps, DateTimeOffset? replacedAt)
    {
        var releases = steps.Where(s => s.Kind == LiftingStepKind.Released).ToList();
        return
        [
            .. from finding in found
               where !(finding.FoundAt < replacedAt && !Inspection.StaysWithTheMachine(finding.Point))
                   && !releases.Any(r => r.ToldAt >= finding.ToldAt && r.Closes.Contains(finding.Point))
               let point = card.Family.CheckPoint(finding.Point, card.HoldsLoad)
               where point is { StopsTheChain: true }
               group finding by point into there
               orderby there.Key.Point
               let first = there.MinBy(f => f.FoundAt)!
               select new StopFinding(there.Key, first.FoundAt, first.By, there.MaxBy(f => f.FoundAt)!.Note),
        ];
    }
}
