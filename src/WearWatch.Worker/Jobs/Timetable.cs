using Microsoft.Extensions.DependencyInjection;
using Quartz;

namespace WearWatch.Worker.Jobs;

/// <summary>When the regular jobs are done: in this process, or on PostgreSQL once by one of all processes.</summary>
internal static class Timetable
{
    /// <summary>A process that has not given a sign of life for so long after it should have is taken for dead.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private static readonly TimeSpan SignOfLifeEvery = TimeSpan.FromSeconds(4);

    public static void AddTimetable(this IServiceCollection services, WearWatchOptions options)
    {
        services.AddQuartz(quartz =>
        {
            if (options.Database.Length > 0) Share(quartz, options.Database);
            Add<PeriodicReview>(quartz, options.ReviewEvery);
            Add<NightlyTraining>(quartz, TimeSpan.FromMinutes(10));
            Add<NightlyBackup>(quartz, TimeSpan.FromMinutes(10));
            Add<RegularThinning>(quartz, TimeSpan.FromHours(6));
        });
        services.AddQuartzHostedService(hosted => hosted.WaitForJobsToComplete = true);
    }

    private static void Share(IQuartzBuilder quartz, string database)
    {
        quartz.ConfigureScheduler(scheduler =>
            (scheduler.InstanceName, scheduler.InstanceId) = ("wearwatch", Guid.NewGuid().ToString("N")));
        quartz.UsePersistentStore(store =>
        {
            store.UsePostgres(database);
            store.ProvisionSchema();
            store.UseClustering(cluster =>
                (cluster.CheckinInterval, cluster.CheckinMisfireThreshold) = (SignOfLifeEvery, Patience));
        });
    }

    /// <summary>Does a job at once and then again and again; if its process dies, another one does it anew.</summary>
    private static void Add<T>(IQuartzBuilder quartz, TimeSpan every)
        where T : RegularJob
    {
        quartz.AddJob<T>(job => job.WithIdentity(typeof(T).Name).StoreDurably().RequestRecovery());
        quartz.AddTrigger(trigger => trigger.ForJob(typeof(T).Name).WithIdentity(typeof(T).Name)
            .WithSimpleSchedule(schedule => schedule.WithInterval(every).RepeatForever()));
    }
}
