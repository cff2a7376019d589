namespace WearWatch.Chains.Families;

/// <summary>Points of a checklist that several kinds of chain have. Elongation says nothing of them.</summary>
/// <remarks>
/// Sources: docs/references.md; what has none is common practice. On a chain that lifts, what elsewhere is mended or oiled
/// goes to a competent person first: docs/references.md [30].
/// </remarks>
internal static class CommonPoints
{
    public const string Practice = "common practice";

    /// <summary>Who names the reasons to reject a chain that lifts at any elongation.</summary>
    public const string ToReject = "docs/references.md [30]";

    /// <summary>What to do with a chain that lifts.</summary>
    public const string Stop = "Stop. A competent person judges it before it lifts again.";

    public static CheckPoint Rollers { get; } = new(
        InspectionPoint.RollerWear, "Rollers are cracked, thin or do not turn",
        "Replace the chain; look at the teeth's gaps.", Practice);

    public static CheckPoint Dry { get; } = new(
        InspectionPoint.DryJoints, "Joints are dry, or a red-brown deposit comes out of them",
        "Oil reaches too few joints: oil now, and oil more often or nearer to the plate gaps.", "docs/references.md [51]");

    public static CheckPoint Teeth { get; } = new(
        InspectionPoint.HookedTeeth, "Teeth are hooked or thinned",
        "No new chain on these wheels: replace both.", "docs/references.md [36]");

    public static CheckPoint Line { get; } = new(
        InspectionPoint.Alignment, "Wheels are out of line: inner plates shine at one side",
        "Align the shafts and the wheels.", Practice);

    public static CheckPoint Anchors { get; } = new(
        InspectionPoint.AnchorsAndSheaves, "Anchors, their pins or the sheaves are worn, cracked or loose",
        Stop, ToReject, StopsTheChain: true);

    /// <summary>Cracks and what moved in the joints.</summary>
    public static CheckPoint Cracked(bool lifts) =>
        BrokenParts("A plate or link is cracked, or a pin is turned, proud or missing", lifts);

    /// <summary>What no chain of any kind runs on with.</summary>
    /// <param name="ask">What to look for.</param>
    /// <param name="lifts">Whether it lifts or holds a load.</param>
    public static CheckPoint BrokenParts(string ask, bool lifts) => new(
        InspectionPoint.CrackedOrTurnedParts, ask,
        lifts ? "Stop. It rejects a lifting chain at any elongation; a competent person decides."
            : "Do not run on: replace the chain and find out why.",
        lifts ? ToReject : Practice, StopsTheChain: true);

    /// <summary>Joints that do not bend freely.</summary>
    public static CheckPoint Stiff(bool lifts) => lifts
        ? new(
            InspectionPoint.StiffJoints, "A joint is stiff",
            "Stop. Clean and oil it and look again: stiff by rust or a bent pin rejects the chain. A competent person judges it "
            + "before it lifts again.", Practice, StopsTheChain: true)
        : new(
            InspectionPoint.StiffJoints, "A joint is stiff: the chain stands kinked after the wheel",
            "Clean and oil it; if it stays stiff, replace the chain or the link.", Practice);

    /// <summary>Plates worn at their sides or edges.</summary>
    public static CheckPoint Plates(bool lifts) => new(
        InspectionPoint.PlateWear, "Plates are worn at the sides, or by 5 % of their height",
        lifts ? Stop : "Look for wheels out of line or rubbing guides; replace chain and wheels together.",
        lifts ? ToReject : "docs/references.md [28]", StopsTheChain: lifts);

    /// <summary>Rust and pits.</summary>
    public static CheckPoint Rust(bool lifts) => lifts
        ? new(
            InspectionPoint.Corrosion, "Rust or pitting",
            "Stop. Oil does not heal it: pits reject the chain, and a competent person judges rust before it lifts again.",
            ToReject, StopsTheChain: true)
        : new(
            InspectionPoint.Corrosion, "Rust or pitting on pins or plates",
            "Oil it, keep water away; pitted parts are replaced.", Practice);

    /// <summary>Sag of the slack side.</summary>
    /// <param name="shortens">Whether pitches may be taken out.</param>
    public static CheckPoint Sag(bool shortens) => new(
        InspectionPoint.Sag, "Sag of the slack side is above 2 to 4 % of the centre distance, or there is none",
        shortens ? "Set the take-up; shorten by two pitches when its travel is used up."
            : "Set the take-up. Never shorten this chain: when the travel is used up it is replaced whole.", Practice);

    /// <summary>The anchors, where something hangs from the chain.</summary>
    public static IEnumerable<CheckPoint> WhereItHangs(bool lifts) => lifts ? [Anchors] : [];
}
