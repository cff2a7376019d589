using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>When a measure will have reached its limit, or why that is not known.</summary>
public abstract record MeasureOutlook
{
    private MeasureOutlook()
    {
    }

    /// <summary>There is a forecast.</summary>
    /// <param name="Forecast">The running hours left from the last visit.</param>
    /// <param name="EarlyDate">The date that nineteen of twenty outlast; null when not in sight.</param>
    /// <param name="MiddleDate">The date that half outlast; null when not in sight.</param>
    /// <param name="ProbabilityPassed">Probability that the limit has been passed by now.</param>
    /// <param name="HoursSince">Running hours since that visit.</param>
    public sealed record Known(
        WearForecast Forecast, DateTimeOffset? EarlyDate, DateTimeOffset? MiddleDate, double ProbabilityPassed,
        double HoursSince) : MeasureOutlook;

    /// <summary>There is none.</summary>
    /// <param name="Reason">Why, in plain words.</param>
    public sealed record NotKnown(Phrase Reason) : MeasureOutlook;
}
