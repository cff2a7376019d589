using WearWatch.Phrases;

namespace WearWatch.Trends;

/// <summary>What came of fitting a trend: the trend, or why the points do not determine one.</summary>
/// <remarks>Too few readings, or several at the same hour, are everyday input and no mistake of the caller.</remarks>
/// <typeparam name="TTrend">The kind of trend.</typeparam>
public abstract record TrendFit<TTrend>
{
    private TrendFit()
    {
    }

    /// <summary>The points determine a trend.</summary>
    /// <param name="Trend">The fitted trend.</param>
    public sealed record Fitted(TTrend Trend) : TrendFit<TTrend>;

    /// <summary>The points do not determine a trend.</summary>
    /// <param name="Reason">Why, in plain words.</param>
    public sealed record Undetermined(Phrase Reason) : TrendFit<TTrend>;
}
