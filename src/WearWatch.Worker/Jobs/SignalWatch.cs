using System.Threading.Channels;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using WearWatch.Plant.Signals;
using WearWatch.Plant.Telemetry;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Jobs;

/// <summary>Concludes from telemetry soon after it arrived, and once a minute whatever this process was told.</summary>
public sealed class SignalWatch(SignalDesk desk, TelemetryNews news, TimeProvider clock, ILogger<SignalWatch> logger)
    : BackgroundService
{
    private static readonly TimeSpan Every = TimeSpan.FromMinutes(1);

    /// <summary>Messages come in flocks; so long it is waited for the rest of one.</summary>
    private static readonly TimeSpan Flock = TimeSpan.FromMilliseconds(250);

    private readonly Channel<bool> bell =
        Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        news.Stored += Ring;
        try
        {
            while (true)
            {
                await ConcludeAsync(stoppingToken);
                using var minute = CancellationTokenSource.CreateLinkedTokenSource(stoppingToken);
                await Task.WhenAny(bell.Reader.WaitToReadAsync(minute.Token).AsTask(), Task.Delay(Every, clock, minute.Token));
                await minute.CancelAsync();
                stoppingToken.ThrowIfCancellationRequested();
                if (bell.Reader.TryRead(out _)) await Task.Delay(Flock, clock, stoppingToken);
            }
        }
        finally
        {
            news.Stored -= Ring;
        }
    }

    private void Ring(IReadOnlyList<TelemetryRow> rows) => bell.Writer.TryWrite(true);

    private async Task ConcludeAsync(CancellationToken ct)
    {
        try
        {
            await desk.RunOnceAsync(ct);
        }
        catch (Exception e) when (e is not OperationCanceledException || !ct.IsCancellationRequested)
        {
            logger.JobFailed(e, "conclusions from telemetry", Every);
        }
    }
}
