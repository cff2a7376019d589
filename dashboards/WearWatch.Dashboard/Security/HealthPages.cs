using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace WearWatch.Dashboard.Security;

/// <summary>
/// Tells whoever watches the process how it is: <c>/health/live</c> whether it answers at all, <c>/health/ready</c> and
/// <c>/health</c> what it depends on.
/// </summary>
internal static class HealthPages
{
    public static void MapHealth(this WebApplication app)
    {
        var health = app.MapGroup("/health").AllowAnonymous().DisableRateLimiting();
        health.MapHealthChecks("/live", new HealthCheckOptions { Predicate = _ => false });
        health.MapHealthChecks("/ready", new HealthCheckOptions { ResponseWriter = WriteAsync });
        health.MapHealthChecks("");
    }

    /// <summary>
    /// Status by part. What stands behind it may tell of the plant's network, so it is only in the log and on the administrator's
    /// page.
    /// </summary>
    private static Task WriteAsync(HttpContext context, HealthReport report) => context.Response.WriteAsJsonAsync(new
    {
        status = report.Status.ToString(),
        parts = report.Entries.ToDictionary(e => e.Key, e => e.Value.Status.ToString()),
    });
}
