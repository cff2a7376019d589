using WearWatch.Dashboard.Engineer.Exports;
using WearWatch.Dashboard.Engineer.History;
using WearWatch.Dashboard.Engineer.Report;
using WearWatch.Dashboard.Kit.Exports;

namespace WearWatch.Dashboard.Engineer;

/// <summary>Puts the reliability engineer's pages into the dashboard.</summary>
public static class EngineerServices
{
    /// <summary>Adds what its pages need besides their queries.</summary>
    public static IServiceCollection AddEngineerServices(this IServiceCollection services) => services
        .AddSingleton<HistoryTables>()
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
