namespace WearWatch.SensorSim.Measuring;

/// <summary>A gross error of the person who measured.</summary>
public enum Slip
{
    /// <summary>None: an honest reading with its ordinary scatter.</summary>
    None,

    /// <summary>The tape was laid over one pitch more than was written down.</summary>
    OnePitchTooMany,

    /// <summary>The tape was laid over one pitch fewer than was written down.</summary>
    OnePitchTooFew,

    /// <summary>The decimal point slipped by one digit.</summary>
    DecimalSlip,

    /// <summary>Two digits changed places.</summary>
    SwappedDigits,
}
