using WearWatch.Phrases;

namespace WearWatch.Chains.Families;

/// <summary>Points of a checklist that several kinds of chain have. Elongation says nothing of them.</summary>
/// <remarks>
/// Sources: docs/references.md; what has none is common practice. A chain that lifts has points of its own, since what is mended
/// or oiled here goes to a competent person there: <see cref="LiftingPoints"/>.
/// </remarks>
internal static class CommonPoints
{
    public const string Practice = "common practice";

    public static CheckPoint Rollers { get; } = new(
        InspectionPoint.RollerWear, $"Rollers are cracked, thin or do not turn",
        $"Replace the chain; look at the teeth's gaps.", Practice);

    public static CheckPoint Dry { get; } = new(
        InspectionPoint.DryJoints, $"Joints are dry, or a red-brown deposit comes out of them",
        $"Oil reaches too few joints: oil now, and oil more often or nearer to the plate gaps.", "docs/references.md [51]");

    public static CheckPoint Teeth { get; } = new(
        InspectionPoint.HookedTeeth, $"Teeth are hooked or thinned",
        $"No new chain on these sprockets: replace both.", "docs/references.md [36]");

    public static CheckPoint Line { get; } = new(
        InspectionPoint.Alignment, $"Sprockets are out of line: inner plates shine at one side",
        $"Align the shafts and the sprockets.", Practice);

    /// <summary>Cracks and what moved in the joints.</summary>
    public static CheckPoint Cracked { get; } = BrokenParts($"A plate or link is cracked, or a pin is turned, proud or missing");

    /// <summary>Joints that do not bend freely.</summary>
    public static CheckPoint Stiff { get; } = new(
        InspectionPoint.StiffJoints, $"A joint is stiff: the chain stands kinked after the sprocket",
        $"Clean and oil it; if it stays stiff, replace the chain or the link.", Practice);

    /// <summary>Plates worn at their sides or edges.</summary>
    public static CheckPoint Plates { get; } = new(
        InspectionPoint.PlateWear, $"Plates are worn at the sides, or by 5 % of their height",
        $"Look for sprockets out of line or rubbing guides; replace chain and sprockets together.", "docs/references.md [28]");

    /// <summary>Rust and pits.</summary>
    public static CheckPoint Rust { get; } = new(
        InspectionPoint.Corrosion, $"Rust or pitting on pins or plates",
        $"Oil it, keep water away; pitted parts are replaced.", Practice);

    /// <summary>What no chain of any kind runs on with.</summary>
    /// <param name="ask">What to look for.</param>
    public static CheckPoint BrokenParts(Phrase ask) => new(
        InspectionPoint.CrackedOrTurnedParts, ask,
        $"Do not run on: replace the chain and find out why.", Practice, StopsTheChain: true);

    /// <summary>Sag of the slack side.</summary>
    /// <param name="shortens">Whether pitches may be taken out.</param>
    public static CheckPoint Sag(bool shortens) => new(
        InspectionPoint.Sag, $"Sag of the slack side is above 2 to 4 % of the centre distance, or there is none",
        shortens ? Phrase.Of($"Set the take-up; shorten by two pitches when its travel is used up.")
            : $"Set the take-up. Never shorten this chain: when the travel is used up it is replaced whole.", Practice);
}
