namespace WearWatch.Wear;

/// <summary>What calibration on a plant's own completed chains gave.</summary>
public abstract record CalibrationOutcome
{
    private CalibrationOutcome()
    {
    }

    /// <summary>The constants to go on with.</summary>
    /// <param name="before">The constants before.</param>
    public WearConstants InUse(WearConstants before) => this is Calibrated { IsClear: true } own ? own.Constants : before;

    /// <summary>The plant's own constants.</summary>
    /// <param name="Constants">The constants.</param>
    /// <param name="Chains">From how many chains.</param>
    /// <param name="LogEvidenceGain">
    /// By how much ln of the probability of all their readings rose over the constants before.
    /// </param>
    public sealed record Calibrated(WearConstants Constants, int Chains, double LogEvidenceGain) : CalibrationOutcome
    {
        /// <summary>Gain for each chain from which the own constants are to be used.</summary>
        /// <remarks>In worlds that the defaults are of, 0.02 and 0.11 were seen; in another world 0.80 and 1.83.</remarks>
        public const double ClearGainPerChain = 0.25;

        /// <summary>
        /// Whether the chains speak clearly for the own constants. If not, the constants before are as good and stay.
        /// </summary>
        public bool IsClear => LogEvidenceGain >= ClearGainPerChain * Chains;
    }

    /// <summary>Too few chains have run out: the constants stay as they are.</summary>
    /// <param name="Have">How many have.</param>
    /// <param name="Need">How many it takes.</param>
    public sealed record TooFewChains(int Have, int Need) : CalibrationOutcome;
}
