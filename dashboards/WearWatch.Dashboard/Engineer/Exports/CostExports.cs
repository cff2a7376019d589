using WearWatch.Dashboard.Engineer.Compare;
using WearWatch.Dashboard.Engineer.Costs;
using WearWatch.Dashboard.Engineer.LifeData;
using WearWatch.Dashboard.Kit.Exports;
using WearWatch.Plant.Costs;

namespace WearWatch.Dashboard.Engineer.Exports;

/// <summary>Costs and comparisons as files.</summary>
public static class CostExports
{
    private static readonly string[] CostHeader =
    [
        "group", "year", "running_h", "swaps", "broke", "chains", "sprockets", "stops", "breakdowns", "total", "per_1000_h",
        "unused_price", "unused_h", "avoided", "saved", "oilings", "oil_ml",
    ];

    private static readonly string[] CompareHeader = ["measure", "a", "b", "difference", "low90", "high90", "seen"];

    public static void MapCostExports(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/engineering/costs.csv", async (HttpContext http, CostQuery costs, CancellationToken ct) =>
            CsvExport.File("costs.csv", CostHeader, (await CostView.AskAsync(costs, By(http), ct)).Groups
                .SelectMany(g => new[] { Row(g.Group, "now", g.Year), Row(g.Group, "before", g.Before) })));
        routes.MapGet(
            "/engineering/costs.svg", async (HttpContext http, CostQuery costs, PictureExport pictures, CancellationToken ct) =>
            await pictures.SvgAsync<CostChart>("costs.svg", new() { ["View"] = await CostView.AskAsync(costs, By(http), ct) }));
        routes.MapGet("/engineering/compare.csv", async (HttpContext http, CompareQuery comparing, CancellationToken ct) =>
            CsvExport.File(
                "compare.csv", CompareHeader, (await comparing.AskAsync(Filter(http), ct)).Rows.Select(r => new object?[]
            {
                r.Measure, r.A, r.B, r.Difference?.Value, r.Difference?.Interval.Low, r.Difference?.Interval.High,
                r.Difference?.IsSeen == true ? "yes" : "no",
            })));
        routes.MapGet("/engineering/compare.svg",
            async (HttpContext http, CompareQuery comparing, PictureExport pictures, CancellationToken ct) =>
            await pictures.SvgAsync<SurvivalChart>(
                "compare.svg", new() { ["Groups"] = (await comparing.AskAsync(Filter(http), ct)).Sides }));
    }

    private static LifeGrouping By(HttpContext http) =>
        LifeGroupings.FromQuery(http.Request.QueryString.Value ?? "", LifeGrouping.Type);

    private static CompareFilter Filter(HttpContext http) => CompareFilter.FromQuery(http.Request.QueryString.Value ?? "");

    private static object?[] Row(string group, string year, CostStatement s) =>
    [
        group, year, s.Hours, s.Swaps, s.Broke, s.Chains, s.Sprockets, s.Stops, s.Breakdowns, s.Total, s.PerThousandHours,
        s.UnusedPrice, s.UnusedHours, s.Spared, s.Saved, s.Oilings, s.OilMl,
    ];
}
