namespace WearWatch.Learning;

/// <summary>What came of training a fleet model.</summary>
public abstract record FleetTrainingOutcome
{
    private FleetTrainingOutcome()
    {
    }

    /// <summary>There is a model.</summary>
    /// <param name="Model">The model.</param>
    /// <param name="Report">How well it did on chains that it had not seen, and what it learned.</param>
    public sealed record Trained(FleetModel Model, FleetModelReport Report) : FleetTrainingOutcome;

    /// <summary>Too few chains show a wear rate. The broad prior serves better than what they could teach.</summary>
    /// <param name="Have">Chains whose readings determine a rate.</param>
    /// <param name="Need">How many it takes.</param>
    public sealed record TooFewChains(int Have, int Need) : FleetTrainingOutcome;
}
