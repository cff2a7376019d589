using Microsoft.Extensions.Logging;
using Quartz;

namespace WearWatch.Worker.Jobs;

/// <summary>
/// A job that is done again and again by one process of the plant. One failure never ends it and is never silent.
/// </summary>
/// <remarks>
/// A process that is killed in it leaves it to another one, which begins it anew: every job must be such that what was done of
/// it already is not done twice.
/// </remarks>
/// <param name="name">The job's name in the log and in the book of jobs.</param>
/// <param name="book">Where its runs are kept.</param>
/// <param name="logger">Where failures go.</param>
[DisallowConcurrentExecution]
public abstract class RegularJob(string name, JobBook book, ILogger logger) : IJob
{
    /// <summary>The job.</summary>
    protected abstract Task RunOnceAsync(CancellationToken ct);

    public async ValueTask Execute(IJobExecutionContext context, CancellationToken cancellationToken)
    {
        try
        {
            await book.RunAsync(name, RunOnceAsync, cancellationToken);
        }
        catch (Exception e) when (e is not OperationCanceledException || !cancellationToken.IsCancellationRequested)
        {
            logger.JobFailed(e, name, context.NextFireTimeUtc - context.FireTimeUtc ?? TimeSpan.Zero);
        }
    }
}
