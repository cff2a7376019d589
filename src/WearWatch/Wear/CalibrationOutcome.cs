namespace WearWatch.Wear;

/// <summary>What calibration on a plant's own completed chains gave.</summary>
public abstract record CalibrationOutcome
{
    private CalibrationOutcome()
    {
    }

    /// <summary>The plant's own constants.</summary>
    /// <param name="Constants">The constants.</param>
    /// <param name="Chains">From how many chains.</param>
    /// <param name="LogEvidenceGain">By how much ln of the probability of all their readings rose over the constants before.</param>
    public sealed record Calibrated(WearConstants Constants, int Chains, double LogEvidenceGain) : CalibrationOutcome;

    /// <summary>Too few chains have run out: the constants stay as they are.</summary>
    /// <param name="Have">How many have.</param>
    /// <param name="Need">How many it takes.</param>
    public sealed record TooFewChains(int Have, int Need) : CalibrationOutcome;
}
