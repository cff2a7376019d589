namespace WearWatch.Planning.Plans;

/// <summary>What a plan costs in expectation, by what it is for.</summary>
public readonly record struct PlanCost
{
    /// <summary>Chain life that is thrown away.</summary>
    public double UnusedLife { get; init; }

    /// <summary>Sprockets that chains past their limits take along.</summary>
    public double PastLimit { get; init; }

    /// <summary>Chains that fail while their line runs.</summary>
    public double Breakdowns { get; init; }

    /// <summary>Stops of a line; those after the horizon count one for each swap left over.</summary>
    public double Stops { get; init; }

    /// <summary>
    /// Lines that stand because a chain that holds a load is out of use from its hard date, each counted as a sure breakdown.
    /// </summary>
    public double OutOfUse { get; init; }

    /// <summary>Shutdowns that take longer than planned, since a swap in them does.</summary>
    public double Overruns { get; init; }

    /// <summary>Work beyond the crew's hours.</summary>
    public double Overtime { get; init; }

    /// <summary>Parts that must come sooner than ordinary orders do.</summary>
    public double Express { get; init; }

    /// <summary>Breakdowns to be expected, as a number.</summary>
    public double ExpectedBreakdowns { get; init; }

    /// <summary>The part of it that a cause has.</summary>
    public double Of(CostCause cause) => cause switch
    {
        CostCause.UnusedLife => UnusedLife,
        CostCause.PastLimit => PastLimit,
        CostCause.Breakdowns => Breakdowns,
        CostCause.Stops => Stops,
        CostCause.OutOfUse => OutOfUse,
        CostCause.Overruns => Overruns,
        CostCause.Overtime => Overtime,
        CostCause.Express => Express,
        _ => throw new ArgumentOutOfRangeException(nameof(cause), cause, null),
    };

    /// <summary>All of it.</summary>
    public double Total => UnusedLife + PastLimit + Breakdowns + Stops + OutOfUse + Overruns + Overtime + Express;
}
