namespace WearWatch.Planning.Plans;

/// <summary>What a plan costs money for.</summary>
public enum CostCause
{
    /// <summary>Chain life that is thrown away.</summary>
    UnusedLife,

    /// <summary>Sprockets that chains past their limits take along.</summary>
    PastLimit,

    /// <summary>Chains that fail while their line runs.</summary>
    Breakdowns,

    /// <summary>Stops of a line.</summary>
    Stops,

    /// <summary>Lines that stand because a chain that holds a load is out of use.</summary>
    OutOfUse,

    /// <summary>Shutdowns that take longer than planned.</summary>
    Overruns,

    /// <summary>Work beyond the crew's hours.</summary>
    Overtime,

    /// <summary>Parts that must come with haste.</summary>
    Express,
}
