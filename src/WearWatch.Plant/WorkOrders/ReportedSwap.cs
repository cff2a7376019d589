using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.WorkOrders;

/// <summary>What is known here of the swap that a report is about.</summary>
public sealed record ReportedSwap
{
    /// <summary>The swap under the id that was told; null where there is none.</summary>
    public required SwapRow? Swap { get; init; }

    /// <summary>Where the chain's swap stands now: another decision where that one was changed.</summary>
    public required SwapRow? Standing { get; init; }

    /// <summary>Its work order, by the reports before; null without any.</summary>
    public required WorkOrder? Order { get; init; }

    /// <summary>When the swap was done, as it was reported here; null for one that was not.</summary>
    public required DateTimeOffset? DoneAt { get; init; }

    /// <summary>When the chain was replaced beside the plan since the swap was decided; null for never.</summary>
    public required DateTimeOffset? ReplacedAt { get; init; }

    /// <summary>The moment and the plant's zone.</summary>
    public required PlantTime Time { get; init; }
}
