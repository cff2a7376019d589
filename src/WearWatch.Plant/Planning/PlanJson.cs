namespace WearWatch.Plant.Planning;

/// <summary>A swap plan on the wire: one that is kept, or one that is proposed. Amounts are in the plant's currency.</summary>
public sealed record PlanJson
{
    /// <summary>The moment for which it is worked out.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>How far it reaches.</summary>
    public required DateTimeOffset HorizonEnd { get; init; }

    /// <summary>The state of the decisions from which it starts; to be told when it is kept.</summary>
    public required int Revision { get; init; }

    /// <summary>What is supposed; null for nothing.</summary>
    public required WhatIfJson? WhatIf { get; init; }

    /// <summary>Where the plan does not hold, and what would help; first of chains that hold a load.</summary>
    public required IReadOnlyList<PlanRemarkJson> Remarks { get; init; }

    /// <summary>What the amounts are in.</summary>
    public required string Currency { get; init; }

    /// <summary>What it costs in expectation.</summary>
    public required PlanCostJson Cost { get; init; }

    /// <summary>What the saved plan costs.</summary>
    public required double CostAsItIs { get; init; }

    /// <summary>What the plan by earliest due date would cost.</summary>
    public required double CostByDueDate { get; init; }

    /// <summary>No plan costs less than this, proven; null for a plan that was not just proposed.</summary>
    public required double? CostAtLeast { get; init; }

    /// <summary>The swaps by the chain's name; those without a shutdown wait for the time after the horizon.</summary>
    public required IReadOnlyList<PlannedSwapJson> Swaps { get; init; }

    /// <summary>
    /// Chains whose shutdown is no longer planned, or begins after their hard date, and which have to be placed anew.
    /// </summary>
    public required IReadOnlyList<string> ToPlaceAnew { get; init; }

    /// <summary>What must be ordered for it.</summary>
    public required IReadOnlyList<PlanOrderJson> Orders { get; init; }

    /// <summary>The planned shutdowns within the horizon, in which swaps can stand.</summary>
    public required IReadOnlyList<ShutdownJson> Shutdowns { get; init; }

    /// <summary>A draft as it stands.</summary>
    public static PlanJson Of(PlanDraft draft)
    {
        var input = draft.Board.Input;
        return new PlanJson
        {
            At = input.Now,
            HorizonEnd = input.HorizonEnd,
            Revision = draft.Picture.Revision,
            WhatIf = WhatIfJson.Of(draft.WhatIf),
            Remarks = [.. draft.Plan.Remarks.Select(PlanRemarkJson.Of)],
            Currency = input.Costs.Money,
            Cost = PlanCostJson.Of(draft.Plan.Cost),
            CostAsItIs = PlanCostJson.Amount(draft.AsItIs.Cost.Total),
            CostByDueDate = PlanCostJson.Amount(draft.ByDueDate.Cost.Total),
            CostAtLeast = draft.Proposal is { } proposal ? PlanCostJson.Amount(proposal.Bound) : null,
            Swaps = [.. draft.Plan.Placements.Select(p => PlannedSwapJson.Of(draft, p))],
            ToPlaceAnew = [.. draft.TooLate, .. draft.Homeless],
            Orders = PlanOrderJson.Of(draft),
            Shutdowns =
                [.. input.Windows.OrderBy(w => w.Start).ThenBy(w => w.Line, StringComparer.Ordinal).Select(ShutdownJson.Of)],
        };
    }
}
