namespace WearWatch.Dashboard.Engineering;

/// <summary>Reads the book of lives once after the start, so that the first person who asks need not wait for it.</summary>
public sealed partial class LifeBookOpening(LifeBook book, ILogger<LifeBookOpening> logger) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            var fleet = await book.ReadAsync(stoppingToken);
            LogOpened(logger, fleet.Chains.Count);
        }
        catch (Exception error) when (error is not OperationCanceledException)
        {
            // The pages read it themselves when it is asked for, and say what is wrong then.
            LogFailed(logger, error);
        }
    }

    [LoggerMessage(301, LogLevel.Information, "Lives of {Chains} chains read")]
    private static partial void LogOpened(ILogger logger, int chains);

    [LoggerMessage(302, LogLevel.Warning, "The lives of chains could not be read at the start")]
    private static partial void LogFailed(ILogger logger, Exception error);
}
