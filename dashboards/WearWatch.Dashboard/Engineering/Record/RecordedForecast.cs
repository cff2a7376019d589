using WearWatch.Chains;
using WearWatch.Lives;

namespace WearWatch.Dashboard.Engineering.Record;

/// <summary>One forecast of a life that has ended, scored at a share of that life.</summary>
/// <param name="Score">What was forecast, and what happened.</param>
/// <param name="AtShare">The share of the life at which it stood.</param>
/// <param name="Model">The model that gave the prior.</param>
/// <param name="Card">The chain.</param>
public sealed record RecordedForecast(ScoredForecast Score, double AtShare, string Model, ChainCard Card)
{
    /// <summary>A forecast is scored where it stood at these shares of the life: one for each life and share, as the binomial bands ask.</summary>
    public static IReadOnlyList<double> Shares { get; } = [0.25, 0.50, 0.75, 0.90];
}
