using WearWatch.Chains;

namespace WearWatch.Learning;

/// <summary>A chain whose readings show a rate: one row of the regression.</summary>
/// <param name="Card">Its card.</param>
/// <param name="LogRate">ln of its wear rate in percent per 1,000 running hours.</param>
/// <param name="StandardError">Standard error of that.</param>
internal sealed record RateSample(ChainCard Card, double LogRate, double StandardError);
