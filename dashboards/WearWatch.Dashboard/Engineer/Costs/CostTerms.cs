using WearWatch.Chains;
using WearWatch.Planning.Costs;
using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Engineer.Costs;

/// <summary>What chains, stops and breakdowns are taken to cost: the planner's figures, which a person sets at the plan's inputs.</summary>
/// <param name="Costs">Stops and breakdowns.</param>
/// <param name="PitchPrices">Price of a pitch by chain type, from the store.</param>
/// <param name="UsualPitchPrice">Price of a pitch of any other.</param>
/// <param name="SprocketPrice">Price of a drive's sprockets, which a chain run past its limit takes along.</param>
public sealed record CostTerms(
    PlanningCosts Costs, IReadOnlyDictionary<string, double> PitchPrices, double UsualPitchPrice, double SprocketPrice)
{
    /// <summary>The price of a whole chain.</summary>
    public double ChainPrice(ChainCard card) =>
        (card.Pitches ?? PlanQuery.UsualPitches) * PitchPrices.GetValueOrDefault(card.ChainType, UsualPitchPrice);
}
