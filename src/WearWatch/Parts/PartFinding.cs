using WearWatch.Chains.Parts;
using WearWatch.Wear;

namespace WearWatch.Parts;

/// <summary>What one reading of a part says against its limit.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Hours">Running hours of the part, from when it was renewed.</param>
/// <param name="Way">The way to its limit; null where none is known.</param>
public sealed record PartFinding(PartReading Reading, double Hours, LimitWay? Way)
{
    /// <summary>How far a reading may be wrong, in millimetres at k = 2. Common practice.</summary>
    /// <remarks>
    /// A caliper: 0.03 mm as a rectangle, and as much in seating. A tooth by a template: 0.2 mm. Slack by a rule: 2 mm.
    /// Alignment by a straight edge: 0.5 mm.
    /// </remarks>
    public static double ExpandedMm(WearPart part) => part switch
    {
        WearPart.ToothRoot or WearPart.ToothHook => 0.4,
        WearPart.Sag => 4,
        WearPart.Alignment => 1,
        _ => 2 * Math.Sqrt(0.03 * 0.03 / 3 + 0.03 * 0.03),
    };
}
