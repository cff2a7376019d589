using WearWatch.Chains;
using WearWatch.Planning.Costs;

namespace WearWatch.Plant.Costs;

/// <summary>
/// What chains, stops and breakdowns are taken to cost: the planner's figures, which a person sets at the plan's inputs.
/// </summary>
/// <param name="Costs">Stops and breakdowns.</param>
/// <param name="PitchPrices">Price of a pitch by chain type, from the store.</param>
/// <param name="UsualPitchPrice">Price of a pitch of any other.</param>
/// <param name="SprocketPrice">Price of a drive's sprockets, which a chain run past its limit takes along.</param>
public sealed record CostTerms(
    PlanningCosts Costs, IReadOnlyDictionary<string, double> PitchPrices, double UsualPitchPrice, double SprocketPrice)
{
    /// <summary>Pitches taken for a chain whose length the register does not have.</summary>
    public const int UsualPitches = 100;

    /// <summary>The price of a whole chain.</summary>
    public double ChainPrice(ChainCard card) =>
        (card.Pitches ?? UsualPitches) * PitchPrices.GetValueOrDefault(card.ChainType, UsualPitchPrice);
}
