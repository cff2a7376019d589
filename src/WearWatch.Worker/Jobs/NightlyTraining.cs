using Microsoft.Extensions.Logging;

namespace WearWatch.Worker.Jobs;

/// <summary>Looks again and again whether the night's training is to be done.</summary>
public sealed class NightlyTraining(FleetSchool school, TimeProvider clock, ILogger<NightlyTraining> logger)
    : JobLoop("training of the fleet model", TimeSpan.FromMinutes(10), clock, logger)
{
    protected override Task RunOnceAsync(CancellationToken ct) => school.RunOnceAsync(ct);
}
