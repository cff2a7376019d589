using WearWatch.Planning.Windows;

namespace WearWatch.Planning.Plans;

/// <summary>What the hard date of a chain that holds a load lets a plan do: the one place where that is decided.</summary>
/// <remarks>
/// The date is one for everybody: no swap stands in a shutdown that begins after it. A proposal promises only what is there: it
/// uses a shutdown that is long enough, whose crew has the hours, and before which the parts come without haste. A person who
/// has arranged the rest may place it in any shutdown up to the date. Where a proposal has no such shutdown, the answer is that
/// the chain is out of use from its date; it is never weighed against money.
/// </remarks>
internal static class HardDate
{
    private const double Rounding = 1e-9;

    /// <summary>Whether a swap in a shutdown keeps the date.</summary>
    public static bool Keeps(SwapUnit unit, ShutdownWindow window) => unit.OutOfUseBy is not { } by || window.Start <= by;

    /// <summary>
    /// From when chains without a shutdown are out of use; null where their next chance comes before, or where there is no date.
    /// </summary>
    public static DateTimeOffset? OutOfUseFrom(SwapUnit unit, PlanInput input) =>
        unit.OutOfUseBy is { } by && by <= input.HorizonEnd + input.Costs.NextChance ? by : null;

    /// <summary>What a shutdown lacks for a swap by itself, as a part of a sentence; null when nothing.</summary>
    public static Phrase? Lacks(PlanCase plan, int u, int w)
    {
        var (unit, window) = (plan.Units[u], plan.Windows[w]);
        var turn = plan.Turns.First(t => t.Windows.Contains(w));
        if (Preparation.IsFrozen(plan, w))
            return $"its work is prepared, and proposals leave it as it is until {plan.Input.FrozenUntil.Day()}";
        if (unit.Hours > plan.WindowHours[w] + Rounding)
            return $"it lasts {plan.WindowHours[w]:0.#} h and the swap takes {unit.Hours:0.#} h";
        if (unit.CrewHours > turn.Hours + Rounding)
            return $"crew {turn.Crew} has {turn.Hours:0.#} h and the swap takes {unit.CrewHours:0.#} h of work";
        if (plan.Supplies.FirstOrDefault(s => IsShort(unit, s, window)) is not { } supply) return null;
        return $"{supply.Part.Quantity(unit.Needs[supply.Part])} are not there by then without haste";
    }

    private static bool IsShort(SwapUnit unit, PartSupply supply, ShutdownWindow window) =>
        supply.Binds(window.Start) && unit.Needs.GetValueOrDefault(supply.Part) > supply.Spare.AvailableAt(window.Start);
}
