using System.Data.Common;
using System.Net.Sockets;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using WearWatch.Storage.Engines;

namespace WearWatch.Worker.Jobs;

/// <summary>Hears in PostgreSQL what other processes tell, and listens again when the connection broke.</summary>
public sealed class NewsFromOthers(WearStore store, NewsListener listener, TimeProvider clock, ILogger<NewsFromOthers> logger)
    : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        if (store.Postgres is null) return;
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                await listener.ListenAsync(stoppingToken);
            }
            catch (Exception e) when (e is DbException or SocketException or IOException)
            {
                logger.NotListening(e.Message, Pause);
                await Task.Delay(Pause, clock, stoppingToken);
            }
        }
    }
}
