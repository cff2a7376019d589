
using WearWatch.Dashboard.Engineer.Changes;
using WearWatch.Dashboard.Engineer.Drivers;
using WearWatch.Dashboard.Kit.Exports;

namespace WearWatch.Dashboard.Engineer.Exports;

/// <summary>The drivers of wear and the rate changes as files.</summary>
public static class DriverExports
{
    private static readonly string[] EffectHeader =
        ["of", "step", "rate_factor", "rate_factor_low90", "rate_factor_high90", "driver", "chains"];

    private static readonly string[] ChainHeader =
        ["chain", "line", "rate_pct_per_1000h", "expected_pct_per_1000h", "ratio", "ratio_low90", "ratio_high90", "readings",
            "records_tell"];

    private static readonly string[] PartialHeader =
        ["quantity", "value", "rate_factor", "rate_factor_low90", "rate_factor_high90"];

    private static readonly string[] LearningHeader = ["chains", "error_of_ln_rate"];

    private static readonly string[] ChangeHeader =
        ["chain", "line", "raised_at", "ended_at", "why", "judged", "judged_by", "nearby"];

    public static void MapDriverExports(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/engineering/drivers/effects.csv", async (DriversQuery drivers, CancellationToken ct) =>
            CsvExport.File("effects.csv", EffectHeader,
                (await drivers.AskAsync(ct) is { } view ? view.Drivers.Concat(view.Lines).Concat(view.Lots) : [])
                .Select(d => new object?[] { d.Name, d.Step, d.Factor, d.Low, d.High, d.IsDriver ? "yes" : "no", d.Chains })));
        routes.MapGet("/engineering/drivers/chains.csv", async (DriversQuery drivers, CancellationToken ct) =>
            CsvExport.File("chains-against-expectation.csv", ChainHeader,
                (await drivers.AskAsync(ct) is { } view ? view.Fast.Concat(view.Slow) : [])
                .Select(c => new object?[]
                {
                    c.Name,
                    c.Line,
                    c.Rate,
                    c.Expected,
                    c.Ratio,
                    c.Low,
                    c.High,
                    c.Readings,
                    string.Join("; ", c.Hints),
                })));
        routes.MapGet(
            "/engineering/drivers/effects.svg", async (DriversQuery drivers, PictureExport pictures, CancellationToken ct) =>
            await drivers.AskAsync(ct) is { } view
                ? await pictures.SvgAsync<ForestChart>("effects.svg", new() { ["Rows"] = view.Drivers })
                : Results.NotFound());
        routes.MapGet("/engineering/drivers/partial.csv", async (DriversQuery drivers, CancellationToken ct) =>
            CsvExport.File("partial-effects.csv", PartialHeader, (await drivers.AskAsync(ct) is { } view ? view.Partial : [])
                .SelectMany(e => e.Points.Select(p => new object?[] { e.Quantity, p.Value, p.Factor, p.Low, p.High }))));
        routes.MapGet("/engineering/drivers/learning.csv", async (DriversQuery drivers, CancellationToken ct) =>
            CsvExport.File(
                "learning-curve.csv", LearningHeader, (await drivers.AskAsync(ct) is { } view ? view.Report.LearningCurve : [])
                .Select(p => new object?[] { p.Chains, p.Error })));
        routes.MapGet("/engineering/changes.csv", async (ChangesQuery changes, CancellationToken ct) =>
            CsvExport.File("rate-changes.csv", ChangeHeader, (await changes.AskAsync(ct)).Rows.Select(r => new object?[]
            {
                r.Chain, r.Line, r.RaisedAt, r.EndedAt, r.Why,
                r.JudgedReal switch { true => "real", false => "false_alarm", null => "" }, r.JudgedBy,
                string.Join("; ", r.Nearby),
            })));
    }
}
