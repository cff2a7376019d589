using WearWatch.Dashboard.Kit.Words;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Planner;

/// <summary>What the page of shutdowns, spares and costs shows.</summary>
public sealed record PlanInputsView
{
    public required IReadOnlyList<string> Lines { get; init; }

    public required IReadOnlyList<string> ChainTypes { get; init; }

    public required IReadOnlyList<WindowRuleRow> Rules { get; init; }

    public required IReadOnlyList<SpareRow> Spares { get; init; }

    public required PlanningCostsRow Costs { get; init; }

    public required IReadOnlyList<LineCostRow> LineCosts { get; init; }

    public required IReadOnlyList<string> Chains { get; init; }

    /// <summary>What a swap takes, by the families that the plant runs.</summary>
    public required IReadOnlyList<SwapWorkLine> Works { get; init; }

    /// <summary>The chains with terms of their own.</summary>
    public required IReadOnlyList<SwapTermsLine> Terms { get; init; }

    public required PlantTime Time { get; init; }
}
