using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using WearWatch.Storage;

namespace WearWatch.Worker.Watching;

/// <summary>Whether the regular jobs came to their end when they last ran, wherever that was.</summary>
internal sealed class JobsHealth(IDbContextFactory<WearDb> database) : IHealthCheck
{
    public async Task<HealthCheckResult> CheckHealthAsync(
        HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        try
        {
            await using var db = await database.CreateDbContextAsync(cancellationToken);
            var failed = await db.JobRuns.Where(j => j.Fault != "").Select(j => $"{j.Job}: {j.Fault}")
                .ToListAsync(cancellationToken);
            return failed.Count == 0 ? HealthCheckResult.Healthy() : HealthCheckResult.Degraded(string.Join("; ", failed));
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            return HealthCheckResult.Degraded(e.Message);
        }
    }
}
