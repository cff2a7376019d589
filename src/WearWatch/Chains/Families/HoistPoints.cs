using WearWatch.Criteria;

namespace WearWatch.Chains.Families;

/// <summary>What is looked at on a chain with pins and rollers that lifts or holds a load.</summary>
/// <remarks>By the roller chain of a hoist: docs/references.md [64]; plates as of leaf chain, [30].</remarks>
internal static class HoistPoints
{
    public static IReadOnlyList<CheckPoint> All { get; } =
    [
        LiftingPoints.ToDiscard(
            InspectionPoint.CrackedOrTurnedParts,
            $"A plate or another part is cracked, broken or missing, or side plates stand apart",
            "leaf-plate-crack", "roller-plates-spread"),
        LiftingPoints.ToJudge(
            InspectionPoint.TurnedPins, $"A pin has turned or stands out", "roller-pin-turned", "leaf-pin-proud"),
        LiftingPoints.ToDiscard(
            InspectionPoint.PlateWear,
            $"Plates are worn by {LiftingCriteria.ValueOf("leaf-plate-height"):0} % of their height",
            "leaf-plate-height"),
        LiftingPoints.ToDiscard(
            InspectionPoint.TwistOrBow,
            $"Within any 1.52 m it is twisted by more than {LiftingCriteria.ValueOf("roller-twist"):0} degrees, or bowed to "
            + $"the side by more than {LiftingCriteria.ValueOf("roller-bow"):0.0} mm",
            "roller-twist", "roller-bow"),
        LiftingPoints.ToJudge(
            InspectionPoint.StiffJoints, $"A joint does not bend by hand with ease", "roller-joint"),
        LiftingPoints.ToJudge(
            InspectionPoint.RollerWear, $"Rollers are cracked, thin or do not turn under a light finger", "roller-rollers"),
        LiftingPoints.ToDiscard(InspectionPoint.Pitting, $"Pits of corrosion", "leaf-plate-pits", "roller-pits"),
        LiftingPoints.ToJudge(InspectionPoint.Corrosion, $"Rust or discolouring", "roller-pits"),
        LiftingPoints.ToJudge(InspectionPoint.Nicks, $"Gouges or nicks", "roller-nicks"),
        LiftingPoints.ToJudge(InspectionPoint.HeatMarks, $"Marks of heat or weld spatter", "roller-nicks"),
        LiftingPoints.Anchors, LiftingPoints.Hook, LiftingPoints.Tag, LiftingPoints.Wheel, LiftingPoints.Askew,
        LiftingPoints.Dry, LiftingPoints.Doubt,
    ];

    /// <summary>The same of a chain without rollers.</summary>
    public static IReadOnlyList<CheckPoint> WithoutRollers { get; } =
        [.. All.Where(point => point.Point != InspectionPoint.RollerWear)];
}
