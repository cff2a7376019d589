using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>What a person has given the planner, and what there is to choose from.</summary>
public sealed record PlanInputsView
{
    /// <summary>The lines of the plant.</summary>
    public required IReadOnlyList<string> Lines { get; init; }

    /// <summary>The chain types that run in it.</summary>
    public required IReadOnlyList<string> ChainTypes { get; init; }

    /// <summary>The planned shutdowns, once or recurring.</summary>
    public required IReadOnlyList<WindowRuleRow> Rules { get; init; }

    /// <summary>The store.</summary>
    public required IReadOnlyList<SpareRow> Spares { get; init; }

    /// <summary>What things cost; assumptions until the plant has set its own.</summary>
    public required PlanningCostsRow Costs { get; init; }

    /// <summary>Lines whose stopped hour costs something else.</summary>
    public required IReadOnlyList<LineCostRow> LineCosts { get; init; }

    /// <summary>The names of all chains.</summary>
    public required IReadOnlyList<string> Chains { get; init; }

    /// <summary>What a swap takes, by the families that the plant runs.</summary>
    public required IReadOnlyList<SwapWorkLine> Works { get; init; }

    /// <summary>The chains with terms of their own.</summary>
    public required IReadOnlyList<SwapTermsLine> Terms { get; init; }

    /// <summary>The moment and the plant's zone.</summary>
    public required PlantTime Time { get; init; }
}
