using Microsoft.Extensions.Logging;

namespace WearWatch.Worker.Jobs;

/// <summary>Looks again and again whether the night's training is to be done.</summary>
public sealed class NightlyTraining(FleetSchool school, JobBook book, ILogger<NightlyTraining> logger)
    : RegularJob("look for the night's training", book, logger)
{
    protected override Task RunOnceAsync(CancellationToken ct) => school.RunOnceAsync(ct);
}
