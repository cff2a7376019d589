using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using WearWatch.Plant.Webhooks;
using WearWatch.Worker.Jobs;

namespace WearWatch.Worker.Webhooks;

/// <summary>Looks again and again for what webhooks have to say.</summary>
public sealed class WebhookWriting(
    WebhookWriter writer, IOptions<WebhookOptions> options, TimeProvider clock, ILogger<WebhookWriting> logger)
    : JobLoop("writing of webhooks", options.Value.Every, clock, logger)
{
    protected override Task RunOnceAsync(CancellationToken ct) => writer.RunOnceAsync(ct);
}
