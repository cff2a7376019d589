using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Lifting;

/// <summary>An entry of the register of lifting chains on its way in.</summary>
/// <param name="Chain">The chain's name.</param>
/// <param name="Basis">The entry that the person set out from, by its row; null for the first.</param>
/// <param name="Card">What it says. Its chain, maker, times and fitting are the desk's.</param>
public sealed record NewLiftingCard(string Chain, long? Basis, LiftingCardRow Card);
