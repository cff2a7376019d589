using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using WearWatch.Plant.Telemetry;
using WearWatch.Storage.Series;

namespace WearWatch.Worker.Forwarding;

/// <summary>
/// Empties the outbox again and again. While the store is away it waits longer and longer, up to a minute; the intake goes on.
/// </summary>
public sealed class Forwarder(Outbox outbox, IOptions<InfluxOptions> options, TimeProvider clock, ILogger<Forwarder> logger)
    : BackgroundService
{
    private static readonly TimeSpan LongestPause = TimeSpan.FromMinutes(1);

    /// <summary>Why nothing goes on at the moment; null while all is well.</summary>
    public string? Trouble { get; private set; }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        var pause = options.Value.Every;
        while (!stoppingToken.IsCancellationRequested)
        {
            Trouble = await SendAsync(stoppingToken);
            if (Trouble is null)
            {
                pause = options.Value.Every;
            }
            else
            {
                pause = pause * 2 < LongestPause ? pause * 2 : LongestPause;
                logger.NotForwarded(Trouble, pause);
            }

            await Task.Delay(pause, clock, stoppingToken);
        }
    }

    /// <summary>Sends until nothing waits; says what went wrong.</summary>
    private async Task<string?> SendAsync(CancellationToken ct)
    {
        try
        {
            while (true)
            {
                switch (await outbox.SendAsync(ct))
                {
                    case null: return null;
                    case (SeriesAnswer.Away away, _): return away.Why;
                    case (SeriesAnswer.ShutOut shut, _): return "the store of time series does not let us in: " + shut.Why;
                }
            }
        }
        catch (Exception e) when (e is not OperationCanceledException || !ct.IsCancellationRequested)
        {
            return e.Message;
        }
    }
}
