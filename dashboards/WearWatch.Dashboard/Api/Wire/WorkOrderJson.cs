using WearWatch.Dashboard.Planner;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A report on a work order, and what became of it.</summary>
internal sealed record WorkOrderJson
{
    public required long Id { get; init; }

    /// <summary>The id of the swap as it was told.</summary>
    public required string Swap { get; init; }

    /// <summary>The chain's name; null where no swap has that id.</summary>
    public required string? Chain { get; init; }

    public required string? Line { get; init; }

    public required string OrderNumber { get; init; }

    public required string OrderState { get; init; }

    public required DateTimeOffset? DoneAt { get; init; }

    public required double? HoursWorked { get; init; }

    /// <summary>What was used; null where nothing was said of it.</summary>
    public required IReadOnlyList<MaterialJson>? Material { get; init; }

    public required string Note { get; init; }

    public required string ToldBy { get; init; }

    public required DateTimeOffset ReceivedAt { get; init; }

    /// <summary><c>received</c>, <c>used</c>, <c>in_conflict</c>, <c>theirs_taken</c> or <c>ours_kept</c>.</summary>
    public required string Standing { get; init; }

    /// <summary>What it contradicts; empty for nothing.</summary>
    public required string Conflict { get; init; }

    public required string SettledBy { get; init; }

    public required DateTimeOffset? SettledAt { get; init; }

    /// <summary>What no figure says of a chain that lifts or holds a load; null for any other.</summary>
    public required string? Caution { get; init; }

    public static WorkOrderJson Of(WorkOrderLine line) => new()
    {
        Id = line.Report.Id,
        Swap = line.Report.Swap,
        Chain = line.Chain?.Name,
        Line = line.Chain?.Line,
        OrderNumber = line.Report.Number,
        OrderState = Tokens.Of(line.Report.State),
        DoneAt = line.Report.DoneAt,
        HoursWorked = line.Report.HoursWorked,
        Material = line.Report.Material?.Select(m => new MaterialJson(m.Part, m.Quantity)).ToList(),
        Note = line.Report.Note,
        ToldBy = line.Report.ToldBy,
        ReceivedAt = line.Report.ReceivedAt,
        Standing = Tokens.Of(line.Report.Standing),
        Conflict = T[line.Report.Conflict],
        SettledBy = line.Report.SettledBy,
        SettledAt = line.Report.SettledAt,
        Caution = line.Chain?.HoldsLoad == true ? T[Chains.Caution.LiftingInBrief] : null,
    };
}
