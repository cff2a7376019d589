namespace WearWatch.Dashboard.Planner;

/// <summary>What the planner's pages ask.</summary>
public static class PlanServices
{
    public static IServiceCollection AddSwapPlanning(this IServiceCollection services) => services
        .AddSingleton<PlanQuery>()
        .AddSingleton<KeptPlan>()
        .AddSingleton<JobCardQuery>()
        .AddSingleton<PlanInputs>()
        .AddSingleton<PlanKeeping>();
}
