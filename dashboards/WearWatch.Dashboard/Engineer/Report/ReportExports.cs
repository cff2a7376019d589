using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;

namespace WearWatch.Dashboard.Engineer.Report;

/// <summary>The monthly report on paper.</summary>
public static class ReportExports
{
    public static void MapReport(this IEndpointRouteBuilder routes) => routes.MapGet(
        "/engineering/report.pdf", async (HttpContext http, MonthQuery months, CancellationToken ct) =>
        {
            var report = await months.AskAsync(MonthOf(http.Request.QueryString.Value ?? ""), ct);
            return Results.File(ReportPdf.Write(report), "application/pdf", $"chains-{report.Month:yyyy-MM}.pdf");
        });

    /// <summary>The month that a query string names, as <c>?month=2026-10</c>; null for none.</summary>
    public static DateOnly? MonthOf(string query) => DateOnly.TryParseExact(
        QueryHelpers.ParseQuery(query).GetValueOrDefault("month") + "-01", "yyyy-MM-dd", CultureInfo.InvariantCulture,
        DateTimeStyles.None, out var month)
        ? month
        : null;
}
