namespace WearWatch.Lifting.Examinations;

/// <summary>What a lifting chain is part of: laws name an interval for each.</summary>
public enum LiftingUse
{
    /// <summary>The mast of a fork-lift, the boom of a telehandler, a counterweight.</summary>
    Truck,

    /// <summary>The load chain of a hoist.</summary>
    Hoist,

    /// <summary>A chain sling under the hook.</summary>
    Sling,
}
