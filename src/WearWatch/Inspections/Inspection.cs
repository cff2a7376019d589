using WearWatch.Chains.Families;

namespace WearWatch.Inspections;

/// <summary>What a person found at one point.</summary>
/// <param name="Point">Where.</param>
/// <param name="Found">Whether what the checklist asks for is there; false says that the point is in order.</param>
/// <param name="Note">What else the person wrote, or empty.</param>
public sealed record Finding(InspectionPoint Point, bool Found, string Note = "");

/// <summary>One look at a chain: the points that were looked at, kept for ever as it was told.</summary>
/// <param name="TakenAt">When.</param>
/// <param name="Findings">Each point that was looked at; what is left out was not.</param>
public sealed record Inspection(DateTimeOffset TakenAt, IReadOnlyList<Finding> Findings)
{
    /// <summary>
    /// What stands of all looks at the chain that runs now: of each point the newest finding, where something was found.
    /// </summary>
    /// <remarks>
    /// A new chain begins without any finding, save those at the wheels: hooked teeth stay until somebody says otherwise.
    /// </remarks>
    /// <param name="looks">The looks in the order in which they were taken.</param>
    /// <param name="fittedAt">When the chain that runs now was fitted; null when that is not recorded.</param>
    /// <param name="wheelAt">When a wheel was last replaced; null when that is not recorded.</param>
    public static IReadOnlyList<(Finding Finding, DateTimeOffset Since)> Standing(
        IReadOnlyList<Inspection> looks, DateTimeOffset? fittedAt, DateTimeOffset? wheelAt = null)
    {
        var standing = new Dictionary<InspectionPoint, (Finding Finding, DateTimeOffset Since)>();
        foreach (var look in looks.OrderBy(l => l.TakenAt))
        {
            foreach (var finding in look.Findings)
            {
                var isOld = finding.Point == InspectionPoint.HookedTeeth
                    ? look.TakenAt < wheelAt
                    : look.TakenAt < fittedAt && !StaysWithTheMachine(finding.Point);
                if (!finding.Found || isOld) standing.Remove(finding.Point);
                else standing[finding.Point] =
                    (finding, standing.TryGetValue(finding.Point, out var before) ? before.Since : look.TakenAt);
            }
        }

        return [.. standing.OrderBy(s => s.Key).Select(s => s.Value)];
    }

    /// <summary>What does not go with an old chain.</summary>
    internal static bool StaysWithTheMachine(InspectionPoint point) =>
        point is InspectionPoint.Alignment or InspectionPoint.AnchorsAndSheaves;
}
