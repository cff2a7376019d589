using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Exports;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Overview.ChainList;

/// <summary>The list of chains as a file: as narrowed and sorted on the page, all of it.</summary>
public static class ChainListFile
{
    private static readonly string[] header =
    [
        "chain", "line", "position", "chain_type", "family", "condition", "elongation_pct", "rate_pct_per_1000h", "limit_pct",
        "limit_reason", "replace_by", "limited_by", "tension_by", "tension_task", "out_of_use_by", "planned_swap",
        "next_lubrication", "last_reading", "caution",
    ];

    public static void MapChainListFile(this IEndpointRouteBuilder app) => app.MapGet(
        "/chains.csv", async (HttpRequest asked, ChainListQuery chains, CancellationToken ct) => CsvExport.File(
            "chains.csv", header,
            (await chains.AskAsync(ChainFilter.FromQuery(asked.QueryString.Value ?? ""), 0, int.MaxValue, ct))
            .Rows.Select(RowOf)));

    private static object?[] RowOf(ChainListLine line) =>
    [
        line.Name, line.Line, line.Position, line.ChainType, line.Family.Name, line.Condition.Wire, line.ElongationPct,
        line.RatePctPer1000H, line.LimitPct, line.LimitReason is { } reason ? FileWords.Of(reason) : null,
        line.EarlyDate, line.Sooner?.Cause.ToString(), line.TensionBy,
        line.TensionBy is null ? null : line.IsShortened ? "shorten" : "tension", line.OutOfUseBy, line.PlannedSwap,
        line.NextOilingAt, line.LastReadingAt, line.HoldsLoad ? Caution.LiftingInBrief.ToString() : null,
    ];
}
