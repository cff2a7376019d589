
using WearWatch.Dashboard.Engineer.Drivers;
using WearWatch.Dashboard.Engineer.LifeData;

namespace WearWatch.Dashboard.Engineer;

/// <summary>
/// Reads all lives and works out what the pages show first, so that the first person who asks need not wait for it.
/// </summary>
public sealed partial class EngineerOpening(
    LivesQuery lives, DriversQuery drivers, ILogger<EngineerOpening> logger) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            var view = await lives.AskAsync(LivesFilter.FromQuery(""), stoppingToken);
            await drivers.AskAsync(stoppingToken);
            LogOpened(logger, view.Lives);
        }
        catch (Exception error) when (error is not OperationCanceledException)
        {
            // The pages read it themselves when it is asked for, and say what is wrong then.
            LogFailed(logger, error);
        }
    }

    [LoggerMessage(301, LogLevel.Information, "{Lives} lives of chains read")]
    private static partial void LogOpened(ILogger logger, int lives);

    [LoggerMessage(302, LogLevel.Warning, "The lives of chains could not be read at the start")]
    private static partial void LogFailed(ILogger logger, Exception error);
}
