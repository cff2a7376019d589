namespace WearWatch.Chains.Families;

/// <summary>How often a chain is oiled by hand, in running hours.</summary>
internal static class OilIntervals
{
    /// <summary>
    /// Roller drives: about every 8 hours of running, or before the joints dry. Source: docs/references.md [13].
    /// </summary>
    public static Sourced OfRollerDrives { get; } = new(8, "docs/references.md [13]", IsVerified: true);

    /// <summary>
    /// Slow chains of conveyors and elevators: once a week of running round the clock. Common practice, no source found; drier
    /// or dirtier places want it more often.
    /// </summary>
    public static Sourced OfSlowChains { get; } = new(168, "common practice", IsVerified: false);
}
