namespace WearWatch.Plant.Planning;

/// <summary>What the swap of one chain takes, where it is not what its family and length say.</summary>
/// <param name="Chain">The chain's name.</param>
/// <param name="Line">Its line.</param>
/// <param name="Group">Chains of a line with the same group are swapped together; empty for none.</param>
/// <param name="Hours">How long the line stands for it; null goes by family and length.</param>
/// <param name="People">People at once; null goes by family.</param>
/// <param name="WithSprockets">Whether the drive's sprockets are replaced with the chain.</param>
public sealed record SwapTermsLine(string Chain, string Line, string Group, double? Hours, int? People, bool WithSprockets);
