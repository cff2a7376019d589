using Microsoft.Extensions.Logging;
using WearWatch.Worker.Jobs;

namespace WearWatch.Worker.Telemetry;

/// <summary>Thins telemetry a few times a day.</summary>
public sealed class RegularThinning(TelemetryThinning thinning, TimeProvider clock, ILogger<RegularThinning> logger)
    : JobLoop("thinning of telemetry", TimeSpan.FromHours(6), clock, logger)
{
    protected override Task RunOnceAsync(CancellationToken ct) => thinning.RunOnceAsync(ct);
}
