using WearWatch.Criteria;

namespace WearWatch.Chains.Families;

/// <summary>What is looked at on a round-link chain that lifts or holds a load: of a hoist or of a sling.</summary>
internal static class LinkPoints
{
    public static IReadOnlyList<CheckPoint> All { get; } =
    [
        LiftingPoints.ToDiscard(InspectionPoint.CrackedOrTurnedParts, $"A link is cracked or "
            + $"broken", "link-crack", "sling-crack"),
        LiftingPoints.ToDiscard(
            InspectionPoint.DeformedLinks, $"A link is bent, twisted, stretched or otherwise out of shape", "link-bent",
            "sling-stretched"),
        LiftingPoints.ToDiscard(
            InspectionPoint.LinkContact,
            $"Links are worn by {100 - LiftingCriteria.ValueOf("link-diameter"):0} % of their diameter where they touch, by "
            + $"the mean of two diameters at right angles",
            "link-diameter", "sling-diameter"),
        LiftingPoints.Found(
            InspectionPoint.Nicks, $"Nicks or gouges",
            $"Stop: a competent person judges it, and may grind it if {LiftingCriteria.ValueOf("sling-nick-ground"):0} % "
            + $"of the section is left and it is smooth, without a step.",
            "link-nick", "sling-nick-ground"),
        LiftingPoints.ToDiscard(
            InspectionPoint.HeatMarks, $"Marks of heat or weld spatter; a link that was above 538 °C is out of use for good",
            "link-heat", "sling-hot"),
        LiftingPoints.ToDiscard(InspectionPoint.Pitting, $"Pits of corrosion", "sling-pits"),
        LiftingPoints.ToJudge(InspectionPoint.Corrosion, $"Rust of any kind", "link-nick"),
        LiftingPoints.ToDiscard(InspectionPoint.Coating, $"Coated chain: the coating is worn or rusty", "link-coating"),
        LiftingPoints.ToJudge(
            InspectionPoint.StiffJoints, $"Links do not hinge freely, or the chain binds, jumps or is noisy",
            "sling-hinge", "link-jumps"),
        LiftingPoints.ToJudge(
            InspectionPoint.Overload, $"It was overloaded, is longer than its tag says, or its legs are unequal", "sling-reach",
            "sling-legs", "sling-overloaded"),
        LiftingPoints.Hook, LiftingPoints.Tag, LiftingPoints.Anchors, LiftingPoints.Wheel, LiftingPoints.Dry, LiftingPoints.Doubt,
    ];
}
