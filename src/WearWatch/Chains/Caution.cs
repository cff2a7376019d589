using WearWatch.Chains.Families;
using WearWatch.Phrases;

namespace WearWatch.Chains;

/// <summary>
/// What to remember before a chain is touched, and what WearWatch's figure does not say. For every screen and paper.
/// </summary>
/// <remarks>
/// Informative: local law and the site's qualified person decide. Sources: docs/references.md [30], [36], [45], [46];
/// docs/safety.md.
/// </remarks>
public static class Caution
{
    /// <summary>Before measuring, oiling or fitting any chain. Source: docs/references.md [45].</summary>
    public static Phrase BeforeTouching { get; } =
        $"Stop, isolate, lock and tag; release what is under tension or could fall. Refit the guards before starting.";

    /// <summary>What decides in place of this program.</summary>
    public static Phrase WhoDecides { get; } =
        $"WearWatch informs. Local law, the maker's instructions and the site's qualified person decide.";

    /// <summary>For a chain that lifts. Sources: docs/references.md [30], [46].</summary>
    public static Phrase Lifting { get; } =
        $"Lower and block the load first; never slacken this chain under load. A figure alone never passes a lifting chain: "
        + $"a competent person examines it. Cracks, turned or proud pins and corrosion reject it at any elongation. "
        + $"Do not weld, splice or replace a part of it.";

    /// <summary>The same where a whole caution has no room: beside the state of a chain that lifts.</summary>
    public static Phrase LiftingInBrief { get; } = $"A figure never passes a chain that lifts: a competent person examines it.";

    /// <summary>The cautions for a chain, most urgent first.</summary>
    public static IReadOnlyList<Phrase> For(ChainCard card) => For(card.Family, card.HoldsLoad);

    /// <summary>The cautions for a kind of chain, most urgent first.</summary>
    /// <param name="family">The kind of chain.</param>
    /// <param name="holdsLoad">Whether it lifts or holds a load; see <see cref="ChainFamily.Lifts"/>.</param>
    public static IReadOnlyList<Phrase> For(ChainFamily family, bool holdsLoad) =>
    [
        .. family.Lifts(holdsLoad, !holdsLoad) ? [Lifting] : Array.Empty<Phrase>(), .. family.Cautions, BeforeTouching,
        WhoDecides,
    ];
}
