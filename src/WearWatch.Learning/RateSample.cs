using WearWatch.Chains;

namespace WearWatch.Learning;

/// <summary>A chain whose readings show a rate: one row of the regression.</summary>
internal sealed record RateSample(ChainCard Card, double LogRate, double StandardError, double StartPercent);
