using WearWatch.Chains;
using WearWatch.Lubrication;
using WearWatch.Plant.Oiling;

namespace WearWatch.Plant.Rounds;

/// <summary>What the floor knows of a chain's lubrication: how it is recorded, and what is usual there.</summary>
/// <param name="Entry">How it is recorded.</param>
/// <param name="Usual">Method and oil of the card, else of the tables; the amount last recorded, null for none.</param>
public sealed record FloorOil(OilEntry Entry, OilApplied Usual)
{
    /// <summary>Of a chain.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="task">What its plan foresees.</param>
    /// <param name="lastMl">The amount that was last applied by hand, in millilitres; null when none is recorded.</param>
    /// <returns>Null where nothing is foreseen.</returns>
    public static FloorOil? Of(ChainCard card, OilingTask task, double? lastMl) => task == OilingTask.None ? null : new FloorOil(
        EntryOf(card, task),
        new OilApplied(card.OilMethod ?? OilMethod.Hand, OilRound.GradeOf(card), task == OilingTask.OilByHand ? lastMl : null));

    private static OilEntry EntryOf(ChainCard card, OilingTask task) => card.Duty.Lubrication == LubricationState.Auto
        ? OilEntry.Inspection
        // A lifting chain has its caution on the form, an oiler has to be seen to, and where the place forbids ordinary oil a tap
        // must not say that it was used.
        : task == OilingTask.CheckOiler || card.HoldsLoad || (card.OilGrade.Length == 0 && OilCaution.For(card).Count > 0)
            ? OilEntry.Form
            : OilEntry.Tap;
}
