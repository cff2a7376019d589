using WearWatch.Dashboard.Kit.Exports;
using WearWatch.Plant.Oiling;

namespace WearWatch.Dashboard.Technician.Oiling;

/// <summary>The files of the pages of oiling.</summary>
public static class OilFiles
{
    private static readonly string[] UsedHeader = ["month", "grade", "oilings", "amount_ml", "oilings_without_amount"];

    /// <summary>Maps them.</summary>
    public static IEndpointRouteBuilder MapOilFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/lubrication/used.csv", async (OilConsumption consumption, CancellationToken ct) => CsvExport.File(
            "oil-used.csv", UsedHeader,
            (await consumption.AskAsync(ct)).Select(u => (IReadOnlyList<object?>)
                [u.Month.ToString("yyyy-MM", null), u.Grade, u.Oilings, u.Millilitres, u.WithoutAmount])));
        return routes;
    }
}
