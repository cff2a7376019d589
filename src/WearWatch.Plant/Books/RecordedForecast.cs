using WearWatch.Chains;
using WearWatch.Lives;
using WearWatch.Wear;

namespace WearWatch.Plant.Books;

/// <summary>One forecast of a life that has ended, scored at a share of that life.</summary>
/// <param name="Score">What was forecast, and what happened.</param>
/// <param name="AtShare">The share of the life at which it stood.</param>
/// <param name="Model">The model that gave the prior.</param>
/// <param name="Card">The chain.</param>
public sealed record RecordedForecast(ScoredForecast Score, double AtShare, string Model, ChainCard Card)
{
    /// <summary>When the life ended, if that was told.</summary>
    public DateTimeOffset? EndedAt { get; init; }

    /// <summary>When the chain was fitted, if that was told.</summary>
    public DateTimeOffset? FittedAt { get; init; }

    /// <summary>The spread that the plant's forecasts had then.</summary>
    public ForecastSpread Spread { get; init; } = ForecastSpread.AsMade;

    /// <summary>The score that the forecast would have had without that spread.</summary>
    public ScoredForecast AsMade => Score with { Forecast = Score.Forecast is { } kept ? Spread.Undo(kept) : null };

    /// <summary>
    /// A forecast is scored where it stood at these shares of the life: one for each life and share, as the binomial bands ask.
    /// </summary>
    public static IReadOnlyList<double> Shares { get; } = [0.25, 0.50, 0.75, 0.90];
}
