using WearWatch.Criteria;
using WearWatch.Phrases;

namespace WearWatch.Chains.Families;

/// <summary>Points of a checklist of chains that lift or hold a load: what stops one at once, whatever its wear.</summary>
/// <remarks>
/// Values, sources and certainty are those of <see cref="LiftingCriteria"/>. Such a finding takes the chain out of use until a
/// competent person has released it; oil heals none.
/// </remarks>
internal static class LiftingPoints
{
    /// <summary>What is replaced with a chain that lifts. docs/references.md [30], [65], [66], [75].</summary>
    public static Phrase AtReplacement { get; } =
        $"The whole chain is replaced, the chains of a pair or set together, with anchor and clevis pins. Load wheel, guide or "
        + $"sheaves are inspected before the new one goes on. Never join new chain to old, and never mend one link.";

    private static readonly Phrase Judged = $"Stop: out of use until a competent person has judged and released it by name.";
    private static readonly Phrase Discard = $"Stop: out of use. The chain is replaced whole, its pair or set with it; never "
        + $"mended.";

    /// <summary>What its anchors and sheaves show.</summary>
    public static CheckPoint Anchors { get; } = Found(
        InspectionPoint.AnchorsAndSheaves,
        $"Anchors, clevis pins, bolts or sheaves are worn, cracked or loose", Judged, "leaf-anchor-pin");

    /// <summary>Rust that has not gone deep yet, as far as one can see.</summary>
    public static CheckPoint Rust { get; } = Found(
        InspectionPoint.Corrosion, $"Rust of any kind", $"{Judged} Oil does not heal it.", "leaf-plate-rust");

    /// <summary>Any other doubt.</summary>
    public static CheckPoint Doubt { get; } = Found(
        InspectionPoint.Doubt, $"Any other damage that raises a doubt", Judged, "sling-doubt");

    /// <summary>A hook at the end of the chain: the strictest of several figures.</summary>
    public static CheckPoint Hook { get; } = Found(
        InspectionPoint.Hook,
        $"The hook's throat is {LiftingCriteria.ValueOf("link-hook-throat-us"):0} % wider than recorded, its saddle worn by "
        + $"{LiftingCriteria.ValueOf("link-hook-saddle"):0} %, or it is cracked, bent or twisted",
        Discard, "link-hook-throat-us", "link-hook-saddle");

    /// <summary>The mark that tells what it may carry.</summary>
    public static CheckPoint Tag { get; } = Found(
        InspectionPoint.Tag, $"The tag or the mark with grade and working load is missing or not legible", Judged, "sling-no-tag",
        "link-marking");

    /// <summary>
    /// A joint that dirt holds: the source has it cleaned, oiled and looked at again, and what stays stiff rejects the chain.
    /// </summary>
    public static CheckPoint DirtyJoints { get; } = new(
        InspectionPoint.DirtyJoints, $"A joint is stiff by dirt",
        $"Stop. Clean and oil it slack and without load, then look again before it lifts. What does not bend freely now is stiff "
        + $"by rust or a bent pin, and is described so. In doubt a competent person judges it.",
        SourceOf("leaf-joint-dirt"));

    /// <summary>Dry joints of a chain that lifts: oil it, and look on.</summary>
    public static CheckPoint Dry { get; } = new(
        InspectionPoint.DryJoints, $"Joints are dry, or a red-brown deposit comes out of them",
        $"Oil it slack and without load, so that oil gets into the joints; then look for rust and stiff joints again.",
        SourceOf("leaf-oil-slack", "link-oil"));

    /// <summary>Wheels and guides of a hoist.</summary>
    public static CheckPoint Wheel { get; } = new(
        InspectionPoint.HookedTeeth, $"Teeth or pockets of the load wheel, or the guide, are worn",
        $"A competent person examines chain, load wheel and guide; no new chain runs on worn ones.",
        SourceOf("link-replace-wheel"));

    /// <summary>What rubs or runs askew.</summary>
    public static CheckPoint Askew { get; } = new(
        InspectionPoint.Alignment, $"Outer plates or pin heads shine: it rubs or runs askew",
        $"Tell the competent person; set alignment and clearance right.", SourceOf("leaf-side-wear"));

    /// <summary>A finding that stops the chain.</summary>
    /// <param name="point">What is looked at.</param>
    /// <param name="ask">What to look for.</param>
    /// <param name="advice">What to do.</param>
    /// <param name="criteria">The criteria behind it, whose sources stand with it.</param>
    public static CheckPoint Found(InspectionPoint point, Phrase ask, Phrase advice, params string[] criteria) =>
        new(point, ask, advice, SourceOf(criteria), StopsTheChain: true);

    /// <summary>A finding that a competent person judges.</summary>
    public static CheckPoint ToJudge(InspectionPoint point, Phrase ask, params string[] criteria) =>
        Found(point, ask, Judged, criteria);

    /// <summary>A finding with which the chain is replaced.</summary>
    public static CheckPoint ToDiscard(InspectionPoint point, Phrase ask, params string[] criteria) =>
        Found(point, ask, Discard, criteria);

    /// <summary>The same finding on a chain that lifts, where it is never mended.</summary>
    public static CheckPoint ToDiscard(CheckPoint point) => point with { Advice = Discard, StopsTheChain = true };

    private static string SourceOf(params string[] criteria) =>
        LiftingCriterion.SourceWordsOf(criteria.Select(LiftingCriteria.Of));
}
