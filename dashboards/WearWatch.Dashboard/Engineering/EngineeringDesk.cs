using WearWatch.Dashboard.Engineering.Changes;
using WearWatch.Dashboard.Engineering.Drivers;
using WearWatch.Dashboard.Engineering.Exports;
using WearWatch.Dashboard.Engineering.LifeData;
using WearWatch.Dashboard.Engineering.Record;

namespace WearWatch.Dashboard.Engineering;

/// <summary>Puts the reliability engineer's desk into the dashboard.</summary>
public static class EngineeringDesk
{
    /// <summary>Adds the queries behind its pages.</summary>
    public static IServiceCollection AddEngineeringDesk(this IServiceCollection services) => services
        .AddSingleton<LifeBook>()
        .AddSingleton<LivesQuery>()
        .AddSingleton<KeptRecord>()
        .AddSingleton<RemadeRecord>()
        .AddSingleton<RecordQuery>()
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
        return routes;
    }
}
