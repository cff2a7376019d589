namespace WearWatch.Wear;

/// <summary>What calibration on a plant's own completed chains gave.</summary>
public abstract record CalibrationOutcome
{
    private CalibrationOutcome()
    {
    }

    /// <summary>The constants to go on with, whatever came of it.</summary>
    /// <param name="before">The constants before.</param>
    public WearConstants Else(WearConstants before) => this is Calibrated own ? own.Constants : before;

    /// <summary>The constants that the defaults and the plant's chains together make most likely.</summary>
    /// <param name="Constants">The constants.</param>
    /// <param name="Chains">From how many chains.</param>
    /// <param name="LogEvidenceGain">By how much ln of the probability of all their readings rose over the constants in
    /// use.</param>
    public sealed record Calibrated(WearConstants Constants, int Chains, double LogEvidenceGain) : CalibrationOutcome
    {
        /// <summary>Gain, of ln, from which it is worth making every forecast anew.</summary>
        /// <remarks>Twenty to one, by the usual words for odds (Kass and Raftery 1995: strong, from memory).</remarks>
        public const double WorthwhileGain = 3;

        /// <summary>Whether the constants in use are so much less likely that the new ones should take their place.</summary>
        public bool IsWorthwhile => LogEvidenceGain >= WorthwhileGain;
    }

    /// <summary>No chain has shown anything yet: the constants stay as they are.</summary>
    public sealed record NoChains : CalibrationOutcome;
}
