namespace WearWatch.Wear;

/// <summary>A fitted chain that tells how wear goes: the constants of wear are learned from such.</summary>
/// <param name="Prior">What was believed of it before its first reading.</param>
/// <param name="Chain">The chain with its observations.</param>
public sealed record TellingChain(WearPrior Prior, FittedChain Chain)
{
    /// <summary>With fewer readings a chain says nothing of how wear changes.</summary>
    public const int FewestReadings = 3;

    /// <summary>
    /// The chains of a position that tell: known from their fitting, with enough readings. Whether they have run out, were
    /// replaced before or still run does not matter: what was read of them up to then was read.
    /// </summary>
    /// <param name="history">All that ran under one name.</param>
    /// <param name="priorFor">What is believed of one of its fitted chains before the first reading.</param>
    public static IEnumerable<TellingChain> Of(ChainHistory history, Func<FittedChain, WearPrior> priorFor) =>
        from chain in history.Lives
        where chain.FittingKnown && chain.Observations.Count >= FewestReadings
        select new TellingChain(priorFor(chain), chain);
}
