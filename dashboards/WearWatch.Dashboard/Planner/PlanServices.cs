namespace WearWatch.Dashboard.Planner;

/// <summary>What the planner's pages ask beside the plant's library.</summary>
public static class PlanServices
{
    /// <summary>Adds the job cards.</summary>
    public static IServiceCollection AddSwapPlanning(this IServiceCollection services) => services.AddSingleton<JobCardQuery>();
}
