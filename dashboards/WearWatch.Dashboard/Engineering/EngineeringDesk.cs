using WearWatch.Dashboard.Engineering.Changes;
using WearWatch.Dashboard.Engineering.Compare;
using WearWatch.Dashboard.Engineering.Costs;
using WearWatch.Dashboard.Engineering.Drivers;
using WearWatch.Dashboard.Engineering.Exports;
using WearWatch.Dashboard.Engineering.History;
using WearWatch.Dashboard.Engineering.LifeData;
using WearWatch.Dashboard.Engineering.Record;
using WearWatch.Dashboard.Engineering.Report;

namespace WearWatch.Dashboard.Engineering;

/// <summary>Puts the reliability engineer's desk into the dashboard.</summary>
public static class EngineeringDesk
{
    /// <summary>Adds the queries behind its pages.</summary>
    public static IServiceCollection AddEngineeringDesk(this IServiceCollection services) => services
        .AddSingleton<LivesQuery>()
        .AddSingleton<RemadeRecord>()
        .AddSingleton<RecordQuery>()
        .AddSingleton<HistoryTables>()
        .AddSingleton<CostQuery>()
        .AddSingleton<CompareQuery>()
        .AddSingleton<MonthQuery>()
        .AddSingleton<DriversQuery>()
        .AddSingleton<ChangesQuery>()
        .AddSingleton<RateChangeJudging>()
        .AddScoped<PictureExport>()
        .AddHostedService<DeskOpening>();

    /// <summary>Maps its downloads.</summary>
    public static IEndpointRouteBuilder MapEngineeringExports(this IEndpointRouteBuilder routes)
    {
        routes.MapLifeExports();
        routes.MapRecordExports();
        routes.MapDriverExports();
        routes.MapCostExports();
        routes.MapReport();
        routes.MapHistoryFiles();
        return routes;
    }
}
