using Microsoft.Extensions.Logging;
using WearWatch.Plant.Mailing;
using WearWatch.Plant.People;
using WearWatch.Plant.Telemetry;
using WearWatch.Plant.Tracking;
using WearWatch.Plant.Webhooks;

namespace WearWatch.Worker.Jobs;

/// <summary>
/// Thins what grows by itself a few times a day: telemetry, forecasts, ended sessions, the security log, mails and webhooks
/// that are sent.
/// </summary>
public sealed class RegularThinning(
    TelemetryThinning telemetry, ForecastThinning forecasts, SessionDesk sessions, SignInTries tries, SecurityLog log,
    MailBox mails, WebhookBox webhooks, JobBook book, ILogger<RegularThinning> logger)
    : RegularJob("thinning", book, logger)
{
    protected override async Task RunOnceAsync(CancellationToken ct)
    {
        await telemetry.RunOnceAsync(ct);
        await forecasts.RunOnceAsync(ct);
        await sessions.ThinAsync(ct);
        await tries.ThinAsync(ct);
        await log.ThinAsync(ct);
        await mails.ThinAsync(ct);
        await webhooks.ThinAsync(ct);
    }
}
