using WearWatch.Chains.Families;
using WearWatch.Lubrication.Intervals;

namespace WearWatch.Plant.Oiling;

/// <summary>What the plant's history says of the interval of a class of chains.</summary>
/// <param name="Family">The class; null for all chains together.</param>
/// <param name="Learned">What was learned.</param>
public sealed record ClassInterval(ChainFamily? Family, LearnedInterval Learned);
