using Microsoft.Extensions.Logging;
using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Jobs;

/// <summary>Works off what other systems reported of work orders, by file or just before a process ended.</summary>
public sealed class WorkOrderWatch(WorkOrderDesk desk, TimeProvider clock, ILogger<WorkOrderWatch> logger)
    : JobLoop("work orders", TimeSpan.FromSeconds(2), clock, logger)
{
    protected override Task RunOnceAsync(CancellationToken ct) => desk.WorkOffAsync(ct);
}
