namespace WearWatch.Learning;

/// <summary>Why a chain's readings show no wear rate that others could learn from.</summary>
public enum NoRateReason
{
    /// <summary>Fewer than three readings after run-in and below 2 %.</summary>
    TooFewReadings,

    /// <summary>All of them, or all that agree with each other, at the same running hours.</summary>
    AllAtOneTime,

    /// <summary>No elongation over the hours, or the chain seems to have become shorter.</summary>
    NoWear,

    /// <summary>The rate is known less well than within a factor of 1.65.</summary>
    TooUncertain,
}
