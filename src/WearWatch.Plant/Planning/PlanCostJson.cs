using WearWatch.Planning.Plans;

namespace WearWatch.Plant.Planning;

/// <summary>What a plan costs in expectation, by what it is for.</summary>
public sealed record PlanCostJson
{
    /// <summary>All of it.</summary>
    public required double Total { get; init; }

    /// <summary>Chain life that is thrown away.</summary>
    public required double UnusedLife { get; init; }

    /// <summary>Sprockets that chains past their limits take along.</summary>
    public required double PastLimit { get; init; }

    /// <summary>Chains that fail while their line runs.</summary>
    public required double Breakdowns { get; init; }

    /// <summary>Stops of a line.</summary>
    public required double Stops { get; init; }

    /// <summary>Lines that stand because a chain that holds a load is out of use.</summary>
    public required double OutOfUse { get; init; }

    /// <summary>Shutdowns that take longer than planned.</summary>
    public required double Overruns { get; init; }

    /// <summary>Work beyond the crews' hours.</summary>
    public required double Overtime { get; init; }

    /// <summary>Parts that must come sooner than ordinary orders do.</summary>
    public required double Express { get; init; }

    /// <summary>Breakdowns to be expected, as a number.</summary>
    public required double BreakdownsExpected { get; init; }

    /// <summary>A cost on the wire.</summary>
    public static PlanCostJson Of(PlanCost cost) => new()
    {
        Total = Amount(cost.Total),
        UnusedLife = Amount(cost.UnusedLife),
        PastLimit = Amount(cost.PastLimit),
        Breakdowns = Amount(cost.Breakdowns),
        Stops = Amount(cost.Stops),
        OutOfUse = Amount(cost.OutOfUse),
        Overruns = Amount(cost.Overruns),
        Overtime = Amount(cost.Overtime),
        Express = Amount(cost.Express),
        BreakdownsExpected = Math.Round(cost.ExpectedBreakdowns, 4),
    };

    /// <summary>An amount to a hundredth.</summary>
    public static double Amount(double amount) => Math.Round(amount, 2);
}
