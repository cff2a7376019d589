namespace WearWatch.Lives;

/// <summary>What came of fitting a law to lives.</summary>
public abstract record LifeFitOutcome
{
    private LifeFitOutcome()
    {
    }

    /// <summary>The law was fitted.</summary>
    /// <param name="Fit">The fitted law.</param>
    public sealed record Fitted(LifeFit Fit) : LifeFitOutcome;

    /// <summary>Too few chains have reached their limit to say anything.</summary>
    /// <param name="Have">Failures there are.</param>
    /// <param name="Need">Failures there must be.</param>
    public sealed record TooFewFailures(int Have, int Need) : LifeFitOutcome;

    /// <summary>
    /// All failures came at the same hours and no chain lasted longer: any steepness fits, so none can be told.
    /// </summary>
    /// <param name="Hours">The hours at which all failed.</param>
    public sealed record NoSpread(double Hours) : LifeFitOutcome;
}
