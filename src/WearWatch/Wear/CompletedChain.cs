using WearWatch.Chains;

namespace WearWatch.Wear;

/// <summary>A fitted chain that has run out: the constants of wear are learned from such.</summary>
/// <param name="Prior">What was believed of it before its first reading.</param>
/// <param name="Chain">The chain with its observations.</param>
public sealed record CompletedChain(WearPrior Prior, FittedChain Chain)
{
    /// <summary>With fewer readings a chain says nothing of how wear changes.</summary>
    public const int FewestReadings = 3;

    /// <summary>
    /// The chains of a position that have run out: replaced, or read at their limit or beyond. Their fitting is known.
    /// </summary>
    /// <param name="card">The chain's card; its limit counts.</param>
    /// <param name="history">All that ran under its name.</param>
    /// <param name="priorFor">What is believed of one of its fitted chains before the first reading.</param>
    public static IEnumerable<CompletedChain> Of(ChainCard card, ChainHistory history, Func<FittedChain, WearPrior> priorFor)
    {
        var limitPercent = ReplacementLimit.For(card).Percent;
        return
            from chain in history.Lives
            where chain.FittingKnown && chain.Observations.Count >= FewestReadings
            where chain.Removed || chain.Observations[^1].ElongationPercent >= limitPercent
            select new CompletedChain(priorFor(chain), chain);
    }
}
