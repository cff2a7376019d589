using WearWatch.Dashboard.Engineer.Record;
using WearWatch.Dashboard.Kit.Exports;
using WearWatch.Lives;
using WearWatch.Plant.Books;

namespace WearWatch.Dashboard.Engineer.Exports;

/// <summary>The pictures and tables of the forecast record as files.</summary>
public static class RecordExports
{
    private static readonly string[] ScoreHeader =
    [
        "chain", "line", "model", "life_share", "life_h", "last_reading_h",
        "remaining_h_p05", "remaining_h_p25", "remaining_h_p50", "remaining_h_p75", "remaining_h_p95",
        "relative_error", "held50", "held90", "late_warning",
    ];

    private static readonly string[] CalibrationHeader = ["stated", "reached", "of", "share", "share_low95", "share_high95"];

    public static void MapRecordExports(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/engineering/record.csv", async (HttpContext http, RecordQuery records, CancellationToken ct) =>
            CsvExport.File("record.csv", ScoreHeader, (await records.ForecastsAsync(Filter(http).Remade, ct)).Select(ScoreRow)));
        routes.MapGet(
            "/engineering/record/calibration.csv", async (HttpContext http, RecordQuery records, CancellationToken ct) =>
        {
            var view = await records.AskAsync(Filter(http), ct);
            return CsvExport.File("calibration.csv", CalibrationHeader, view.Looked.Calibration.Select(CalibrationRow));
        });
        routes.MapGet("/engineering/record/coverage.svg",
            async (HttpContext http, RecordQuery records, PictureExport pictures, CancellationToken ct) =>
            await pictures.SvgAsync<CoverageChart>(
                "coverage.svg", new() { ["View"] = await records.AskAsync(Filter(http), ct) }));
        routes.MapGet("/engineering/record/calibration.svg",
            async (HttpContext http, RecordQuery records, PictureExport pictures, CancellationToken ct) =>
            await pictures.SvgAsync<CalibrationChart>(
                "calibration.svg", new() { ["Record"] = (await records.AskAsync(Filter(http), ct)).Looked }));
    }

    private static RecordFilter Filter(HttpContext http) => RecordFilter.FromQuery(http.Request.QueryString.Value ?? "");

    private static IReadOnlyList<object?> ScoreRow(RecordedForecast forecast)
    {
        var score = forecast.Score;
        double? At(int percent) => score.Forecast?.Quantile(percent);
        return
        [
            forecast.Card.Name, forecast.Card.Line, forecast.Model, forecast.AtShare, score.LifeHours, score.LastReadingHours,
            At(5), At(25), At(50), At(75), At(95),
            score.RelativeError, YesNo(score.Held50), YesNo(score.Held90), YesNo(score.IsLateWarning),
        ];
    }

    private static IReadOnlyList<object?> CalibrationRow(CalibrationPoint point)
    {
        var band = point.Observed.Band(RecordView.Confidence);
        return [point.Stated, point.Observed.Hits, point.Observed.Of, point.Observed.Fraction, band.Low, band.High];
    }

    private static string YesNo(bool yes) => yes ? "yes" : "no";
}
