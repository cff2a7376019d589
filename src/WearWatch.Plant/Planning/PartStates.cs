using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;

namespace WearWatch.Plant.Planning;

/// <summary>
/// Hands out the store to the swaps of a draft in the order of their shutdowns, and says of each how its parts stand.
/// </summary>
public sealed class PartStates
{
    private readonly Dictionary<string, PartState> states = [];

    /// <summary>Hands out the store to a draft as it stands.</summary>
    public PartStates(PlanDraft draft)
    {
        var input = draft.Board.Input;
        var spares = input.Spares.ToDictionary(s => s.Part);
        var needs = input.Tasks.ToDictionary(t => t.Chain, t => t.Needs);
        var taken = new Dictionary<Part, int>();
        foreach (var placement in draft.Plan.Placements.Where(p => p.Window is not null).OrderBy(p => p.Window!.Start)
            .ThenBy(p => p.Chain, StringComparer.Ordinal))
        {
            states[placement.Chain] = needs[placement.Chain].Select(StateOf).DefaultIfEmpty(PartState.NotOnRecord).Max();

            PartState StateOf(PartNeed need)
            {
                if (!spares.TryGetValue(need.Part, out var spare)) return PartState.NotOnRecord;
                taken[need.Part] = taken.GetValueOrDefault(need.Part) + need.Quantity;
                return taken[need.Part] <= spare.AvailableAt(placement.Window!.Start) ? PartState.InTime
                    : placement.Window.Start >= input.Now + spare.LeadTime ? PartState.ToOrder
                    : placement.Window.Start >= input.Now + spare.ExpressLeadTime ? PartState.Express
                    : PartState.CannotCome;
            }
        }
    }

    /// <summary>How the parts of a swap stand.</summary>
    public PartState Of(Placement placement) => states.GetValueOrDefault(placement.Chain, PartState.NotOnRecord);
}
