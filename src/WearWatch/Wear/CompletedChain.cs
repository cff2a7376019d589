namespace WearWatch.Wear;

/// <summary>A fitted chain that has run out: the constants of wear are learned from such.</summary>
/// <param name="Prior">What was believed of it before its first reading.</param>
/// <param name="Chain">The chain with its observations.</param>
public sealed record CompletedChain(WearPrior Prior, FittedChain Chain);
