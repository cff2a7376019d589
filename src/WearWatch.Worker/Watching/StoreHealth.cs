using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using WearWatch.Storage;

namespace WearWatch.Worker.Watching;

/// <summary>Whether the plant's memory can be read.</summary>
internal sealed class StoreHealth(IDbContextFactory<WearDb> database) : IHealthCheck
{
    public async Task<HealthCheckResult> CheckHealthAsync(
        HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        try
        {
            await using var db = await database.CreateDbContextAsync(cancellationToken);
            await db.Plants.AnyAsync(cancellationToken);
            return HealthCheckResult.Healthy();
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            return HealthCheckResult.Unhealthy(e.Message);
        }
    }
}
