using Microsoft.Extensions.Hosting;
using WearWatch.Storage.Engines;

namespace WearWatch.Worker.Jobs;

/// <summary>Makes the database and brings it to the present layout before anything else of the host starts.</summary>
public sealed class DatabaseOpening(WearStore store) : IHostedLifecycleService
{
    public Task StartingAsync(CancellationToken cancellationToken) => store.PrepareAsync(cancellationToken);

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
