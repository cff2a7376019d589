using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace WearWatch.Worker.Jobs;

/// <summary>Does a job at once and then again and again. One failure never ends the loop and is never silent.</summary>
/// <param name="name">The job's name in the log.</param>
/// <param name="every">From one start to the next.</param>
/// <param name="clock">The clock.</param>
/// <param name="logger">Where failures go.</param>
public abstract class JobLoop(string name, TimeSpan every, TimeProvider clock, ILogger logger) : BackgroundService
{
    /// <summary>The job.</summary>
    protected abstract Task RunOnceAsync(CancellationToken ct);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(every, clock);
        do
        {
            try
            {
                await RunOnceAsync(stoppingToken);
            }
            catch (Exception e) when (e is not OperationCanceledException || !stoppingToken.IsCancellationRequested)
            {
                logger.JobFailed(e, name, every);
            }
        }
        while (await timer.WaitForNextTickAsync(stoppingToken));
    }
}
