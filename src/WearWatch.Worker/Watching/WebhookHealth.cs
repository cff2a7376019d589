using Microsoft.Extensions.Diagnostics.HealthChecks;
using WearWatch.Plant.Webhooks;

namespace WearWatch.Worker.Watching;

/// <summary>Whether receivers take webhooks. Events wait where they are safe, so trouble is a warning.</summary>
internal sealed class WebhookHealth(WebhookBox box) : IHealthCheck
{
    public async Task<HealthCheckResult> CheckHealthAsync(
        HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        try
        {
            var troubles = await box.TroublesAsync(cancellationToken);
            return troubles.Count == 0 ? HealthCheckResult.Healthy()
                : HealthCheckResult.Degraded(string.Join("; ", troubles.Select(t => $"{t.Name}: {t.Why}")));
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            return HealthCheckResult.Degraded(e.Message);
        }
    }
}
