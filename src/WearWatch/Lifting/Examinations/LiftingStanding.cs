namespace WearWatch.Lifting.Examinations;

/// <summary>Where a lifting chain stands by what people did.</summary>
public enum LiftingStanding
{
    /// <summary>Nobody has taken it out of use.</summary>
    InUse,

    /// <summary>Out of use until a competent person releases it.</summary>
    Quarantined,

    /// <summary>Discarded: nothing brings it back.</summary>
    Disposed,
}
