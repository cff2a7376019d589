using WearWatch.Dashboard.Words;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Planning;

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

    /// <summary>The chains that run in parallel with others: chain, line, group.</summary>
    public required IReadOnlyList<(string Chain, string Line, string Group)> Groups { get; init; }

    public required PlantTime Time { get; init; }
}
