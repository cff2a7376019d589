using WearWatch.Chains;

namespace WearWatch.Inspections;

/// <summary>A point of a checklist.</summary>
/// <param name="Point">What is looked at.</param>
/// <param name="Ask">What to look for, as a statement that is to be found or not.</param>
/// <param name="Advice">What to do when it is found.</param>
/// <param name="Source">Who says so.</param>
/// <param name="StopsTheChain">Whether the chain must not run on until a competent person has judged it.</param>
public sealed record CheckPoint(LookPoint Point, string Ask, string Advice, string Source, bool StopsTheChain = false);

/// <summary>What to look at on each kind of chain. Elongation says nothing of it.</summary>
/// <remarks>Sources: docs/references.md; what has none is common practice. Local rules and the site's qualified person decide.</remarks>
public static class Checklist
{
    private const string Practice = "common practice";

    private static readonly CheckPoint stiff = new(LookPoint.StiffJoints,
        "A joint is stiff: the chain stands kinked after the wheel", "Clean and oil it; if it stays stiff, replace the chain or the link.", Practice);

    private static readonly CheckPoint plates = new(LookPoint.PlateWear,
        "Plates are worn at the sides, or by 5 % of their height", "Look for wheels out of line or rubbing guides; replace chain and wheels together.",
        "docs/references.md [28]");

    private static readonly CheckPoint rollers = new(LookPoint.RollerWear,
        "Rollers are cracked, thin or do not turn", "Replace the chain; look at the teeth's gaps.", Practice);

    private static readonly CheckPoint rust = new(LookPoint.Corrosion,
        "Rust or pitting on pins or plates", "Oil it, keep water away; pitted parts are replaced.", Practice);

    private static readonly CheckPoint dry = new(LookPoint.DryJoints,
        "Joints are dry, or a red-brown deposit comes out of them", "Oil reaches too few joints: oil now, and oil more often or nearer to the plate gaps.",
        "docs/references.md [51]");

    private static readonly CheckPoint teeth = new(LookPoint.HookedTeeth,
        "Teeth are hooked or thinned", "No new chain on these wheels: replace both.", "docs/references.md [36]");

    private static readonly CheckPoint line = new(LookPoint.Alignment,
        "Wheels are out of line: inner plates shine at one side", "Align the shafts and the wheels.", Practice);

    private static readonly CheckPoint sag = new(LookPoint.Sag,
        "Sag of the slack side is above 2 to 4 % of the centre distance, or there is none", "Set the take-up; shorten by two pitches when its travel is used up.",
        Practice);

    private static readonly CheckPoint contact = new(LookPoint.LinkContact,
        "Links are worn by 10 % of their diameter where they touch", "Replace the chain.", Sourced.Memory, StopsTheChain: true);

    private static readonly CheckPoint anchors = new(LookPoint.AnchorsAndSheaves,
        "Anchors, their pins or the sheaves are worn, cracked or loose", "Stop. A competent person judges it before it lifts again.",
        "docs/references.md [30]", StopsTheChain: true);

    /// <summary>The points for a kind of chain, in the order in which one walks around it.</summary>
    /// <param name="family">The kind of chain.</param>
    /// <param name="lifts">Whether it lifts or holds a load.</param>
    public static IReadOnlyList<CheckPoint> For(ChainFamily family, bool lifts = false)
    {
        var lifting = lifts || family == ChainFamily.Leaf;
        var cracked = Cracked(lifting);
        return family switch
        {
            ChainFamily.Leaf => [cracked, stiff, plates, rust, dry, anchors],
            ChainFamily.RoundLink => [.. Lifted(lifting), cracked, contact, rust, teeth, line],
            ChainFamily.Bush or ChainFamily.InvertedTooth => [.. Lifted(lifting), cracked, stiff, plates, rust, dry, teeth, line, sag],
            _ => [.. Lifted(lifting), cracked, stiff, plates, rollers, rust, dry, teeth, line, sag],
        };
    }

    /// <summary>The point of a checklist; null where that kind of chain has none such.</summary>
    public static CheckPoint? Find(LookPoint point, ChainFamily family, bool lifts = false) => For(family, lifts).FirstOrDefault(p => p.Point == point);

    private static CheckPoint[] Lifted(bool lifting) => lifting ? [anchors] : [];

    /// <summary>Cracks reject a lifting chain at any elongation. Source: docs/references.md [30].</summary>
    private static CheckPoint Cracked(bool lifting) => new(
        LookPoint.CrackedOrTurnedParts, "A plate or link is cracked, or a pin is turned, proud or missing",
        lifting ? "Stop. It rejects a lifting chain at any elongation; a competent person decides." : "Do not run on: replace the chain and find out why.",
        lifting ? "docs/references.md [30]" : Practice, StopsTheChain: true);
}
