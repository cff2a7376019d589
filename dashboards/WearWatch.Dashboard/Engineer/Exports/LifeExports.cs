using WearWatch.Dashboard.Engineer.LifeData;
using WearWatch.Dashboard.Kit.Exports;
using WearWatch.Lives;
using WearWatch.Plant.Books;

namespace WearWatch.Dashboard.Engineer.Exports;

/// <summary>The pictures and tables of the page of lives as files.</summary>
public static class LifeExports
{
    public static void MapLifeExports(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/engineering/lives.csv", async (HttpContext http, LifeBook book, CancellationToken ct) =>
            CsvExport.File("lives.csv", LifeHeader, LifeRows(await book.ReadAsync(ct), Filter(http).By)));
        routes.MapGet("/engineering/lives/survival.csv", async (HttpContext http, LivesQuery lives, CancellationToken ct) =>
            CsvExport.File(
                "survival.csv", SurvivalHeader, (await lives.AskAsync(Filter(http), ct)).Drawn.SelectMany(SurvivalRows)));
        routes.MapGet("/engineering/lives/probability-plot.csv",
            async (HttpContext http, LivesQuery lives, CancellationToken ct) =>
            CsvExport.File("paper.csv", PaperHeader, (await lives.AskAsync(Filter(http), ct)).Drawn.SelectMany(PaperRows)));
        routes.MapGet("/engineering/lives/survival.svg",
            async (HttpContext http, LivesQuery lives, PictureExport pictures, CancellationToken ct) =>
            await pictures.SvgAsync<SurvivalChart>(
                "survival.svg", new() { ["Groups"] = (await lives.AskAsync(Filter(http), ct)).Drawn }));
        routes.MapGet("/engineering/lives/probability-plot.svg",
            async (HttpContext http, LivesQuery lives, PictureExport pictures, CancellationToken ct) =>
        {
            var view = await lives.AskAsync(Filter(http), ct);
            return await pictures.SvgAsync<PaperChart>("paper.svg", new() { ["Groups"] = view.Drawn, ["Law"] = view.Law });
        });
    }

    private static readonly string[] LifeHeader =
        ["chain", "line", "group", "life", "hours", "ended", "limit_pct", "fitting_known", "lot", "hours_from_wear"];

    private static readonly string[] SurvivalHeader =
        ["group", "hours", "at_risk", "failed", "suspended", "lasting", "standard_error", "lasting_low90", "lasting_high90",
            "cumulative_hazard"];

    private static readonly string[] PaperHeader = ["group", "hours", "failed", "failed_by_law"];

    private static LivesFilter Filter(HttpContext http) => LivesFilter.FromQuery(http.Request.QueryString.Value ?? "");

    private static IEnumerable<IReadOnlyList<object?>> LifeRows(FleetLives fleet, LifeGrouping grouping) =>
        from chain in fleet.Chains
        from life in chain.Lives
        select new object?[]
        {
            chain.Card.Name, chain.Card.Line, grouping.Of(chain.CardOf(life)), life.Number, life.Life.Hours,
            Ended(life.Life.End), chain.LimitPercent,
            life.FittingKnown ? "yes" : "no", life.Lot,
            life.Life.Failed ? life.Life.Hours : life.Life.Hours + life.Life.Ahead?.MiddleHours,
        };

    private static IEnumerable<IReadOnlyList<object?>> SurvivalRows(GroupOfLives group) =>
        group.Curve.Steps.Zip(group.Curve.Band(BandKind.LogLog, GroupOfLives.Confidence), (s, band) => new object?[]
        {
            group.Name, s.Hours, s.AtRisk, s.Failed, s.Suspended, s.Surviving, s.StandardError, band.Low, band.High,
            s.CumulativeHazard,
        });

    private static IEnumerable<IReadOnlyList<object?>> PaperRows(GroupOfLives group) =>
        PlottedLife.Of(group.Lives)
            .Select(p => new object?[] { group.Name, p.Hours, p.ShareFailed, group.Fit?.ShareFailedAt(p.Hours) });

    private static string Ended(LifeEnd end) => end switch
    {
        LifeEnd.ReachedLimit => "reached_limit",
        LifeEnd.ReplacedBefore => "replaced_before",
        _ => "still_running",
    };
}
