namespace WearWatch.Wear;

/// <summary>How the forecast of a chain moved from reading to reading.</summary>
/// <remarks>
/// Each step knows the readings up to it and none after, as <see cref="Backtest"/>; prior, limit and constants are those of
/// today. A forecast that was right wanders within its own earlier bands, and they narrow.
/// </remarks>
public static class ForecastTrail
{
    /// <summary>One step for each observation of the chain that runs now.</summary>
    public static IReadOnlyList<ForecastStep> Of(Assessment assessment)
    {
        var filter = new WearFilter(assessment.Constants);
        var chain = assessment.History.Current;
        var steps = new List<ForecastStep>(chain.Observations.Count);
        var track = WearFilter.Start(chain, assessment.Prior);
        foreach (var observation in chain.Observations)
        {
            track = filter.Step(chain, track, observation);
            var forecast = filter.Forecast(track, assessment.Limit.Percent);
            steps.Add(new ForecastStep(observation, At(5), At(50), At(95)));

            double? At(int percent) => observation.HoursSinceFitting + forecast.Quantile(percent);
        }

        return steps;
    }
}
