using WearWatch.Criteria;

namespace WearWatch.Chains.Families;

/// <summary>What is looked at on a leaf chain, from its plates to its anchors.</summary>
internal static class LeafPoints
{
    public static IReadOnlyList<CheckPoint> All { get; } =
    [
        LiftingPoints.ToDiscard(
            InspectionPoint.CrackedOrTurnedParts, $"A plate is cracked, broken, bent or missing, or a hole has grown",
            "leaf-plate-crack", "leaf-plate-broken", "leaf-plate-holes", "leaf-part-missing"),
        LiftingPoints.ToDiscard(
            InspectionPoint.TurnedPins,
            $"A pin has turned (its flats stand no longer along the plate) or stands out; it is never pressed back or welded",
            "leaf-pin-turned", "leaf-pin-proud", "leaf-pin-pressed-back"),
        LiftingPoints.ToDiscard(
            InspectionPoint.PlateWear,
            $"Plates are worn by {LiftingCriteria.ValueOf("leaf-plate-height"):0} % of their height where they run over the "
            + $"sheave",
            "leaf-plate-height"),
        LiftingPoints.ToDiscard(InspectionPoint.Pitting, $"Pits of corrosion", "leaf-plate-pits"),
        LiftingPoints.Rust,
        LiftingPoints.ToDiscard(
            InspectionPoint.StiffJoints, $"A joint is stiff by rust or a bent pin, or stays stiff when it was cleaned and oiled",
            "leaf-joint-rust"),
        LiftingPoints.DirtyJoints,
        LiftingPoints.ToJudge(
            InspectionPoint.HeatMarks, $"Marks of heat, weld spatter, paint or plating", "leaf-oil-paint", "leaf-oil-plate"),
        LiftingPoints.Anchors, LiftingPoints.Askew, LiftingPoints.Dry, LiftingPoints.Doubt,
    ];
}
