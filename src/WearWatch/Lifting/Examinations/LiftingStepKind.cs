namespace WearWatch.Lifting.Examinations;

/// <summary>What a person did about a lifting chain's use.</summary>
public enum LiftingStepKind
{
    /// <summary>Taken out of use and tagged until a competent person releases it.</summary>
    Quarantined,

    /// <summary>Released by a competent person.</summary>
    Released,

    /// <summary>Discarded and made unusable: final for this physical chain.</summary>
    Disposed,
}
