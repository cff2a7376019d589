namespace WearWatch.Plant.Planning;

/// <summary>A figure that a plan takes from common practice, since the plant has set none of its own.</summary>
public enum PlanAssumption
{
    /// <summary>What a stopped line, a breakdown, overtime and haste cost.</summary>
    Costs,

    /// <summary>How long the swap takes and how many people it needs.</summary>
    SwapWork,

    /// <summary>What the chain costs.</summary>
    ChainPrice,

    /// <summary>Whether its parts are there: the store has no record of the chain, so it limits nothing.</summary>
    Parts,
}
