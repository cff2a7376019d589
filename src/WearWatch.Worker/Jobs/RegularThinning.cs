using Microsoft.Extensions.Logging;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Worker.Jobs;

/// <summary>Thins telemetry a few times a day.</summary>
public sealed class RegularThinning(TelemetryThinning thinning, JobBook book, ILogger<RegularThinning> logger)
    : RegularJob("thinning of telemetry", book, logger)
{
    protected override Task RunOnceAsync(CancellationToken ct) => thinning.RunOnceAsync(ct);
}
