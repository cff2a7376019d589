using Microsoft.Extensions.Diagnostics.HealthChecks;
using WearWatch.Plant.Settings;

namespace WearWatch.Worker.Watching;

/// <summary>Says again and again how each check of health stands, to whoever collects figures.</summary>
internal sealed class HealthGauge : IHealthCheckPublisher
{
    public Task PublishAsync(HealthReport report, CancellationToken cancellationToken)
    {
        foreach (var (check, entry) in report.Entries)
            Meters.Health.Record((int)entry.Status, new KeyValuePair<string, object?>(Meters.CheckName, check));
        return Task.CompletedTask;
    }
}
