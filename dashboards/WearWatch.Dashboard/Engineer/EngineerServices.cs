using WearWatch.Dashboard.Engineer.Changes;
using WearWatch.Dashboard.Engineer.Compare;
using WearWatch.Dashboard.Engineer.Costs;
using WearWatch.Dashboard.Engineer.Drivers;
using WearWatch.Dashboard.Engineer.Exports;
using WearWatch.Dashboard.Engineer.History;
using WearWatch.Dashboard.Engineer.LifeData;
using WearWatch.Dashboard.Engineer.Record;
using WearWatch.Dashboard.Engineer.Report;
using WearWatch.Dashboard.Kit.Exports;

namespace WearWatch.Dashboard.Engineer;

/// <summary>Puts the reliability engineer's desk into the dashboard.</summary>
public static class EngineerServices
{
    /// <summary>Adds the queries behind its pages.</summary>
    public static IServiceCollection AddEngineerServices(this IServiceCollection services) => services
        .AddSingleton<LivesQuery>()
        .AddSingleton<RecordQuery>()
        .AddSingleton<HistoryTables>()
        .AddSingleton<CostQuery>()
        .AddSingleton<CompareQuery>()
        .AddSingleton<MonthQuery>()
        .AddSingleton<DriversQuery>()
        .AddSingleton<ChangesQuery>()
        .AddScoped<PictureExport>()
        .AddHostedService<EngineerOpening>();

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
