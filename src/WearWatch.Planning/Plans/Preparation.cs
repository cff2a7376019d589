using WearWatch.Planning.Windows;

namespace WearWatch.Planning.Plans;

/// <summary>Whether a swap in a shutdown can be prepared in time: the one place where that is decided.</summary>
/// <remarks>
/// A proposal leaves alone what begins within the frozen time, does not plan parts that cannot arrive, and does not swap a chain
/// that nobody has measured. A person who has arranged it may place the swap there all the same.
/// </remarks>
internal static class Preparation
{
    /// <summary>Whether what is planned in a window stays as it is.</summary>
    public static bool IsFrozen(PlanCase plan, int w) => plan.Windows[w].Start < plan.Input.FrozenUntil;

    /// <summary>Why no proposal puts a unit into a window, null when one may.</summary>
    public static Phrase? WhyNot(PlanCase plan, int u, int w)
    {
        if (IsFrozen(plan, w))
            return $"Its work is prepared. Proposals leave it as it is until {plan.Input.FrozenUntil.Day()}.";
        if (plan.Units[u].MeasureFirst) return $"Measure the chain first. Its date rests on no reading of its own.";
        if (CannotCome(plan, plan.Units[u], plan.Windows[w]) is not { } supply) return null;
        return $"{supply.Part.Words} cannot come in time, not even by express: ordered today it arrives on "
            + $"{supply.ExpressArrives.Day()}.";
    }

    /// <summary>The part of which too little is there for this unit alone, and no more can come; null for none.</summary>
    private static PartSupply? CannotCome(PlanCase plan, SwapUnit unit, ShutdownWindow window) =>
        plan.Supplies.FirstOrDefault(s => s.IsBeyondHaste(window.Start)
            && unit.Needs.GetValueOrDefault(s.Part) > s.Spare.AvailableAt(window.Start));
}
