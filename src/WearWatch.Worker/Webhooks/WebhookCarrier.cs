using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using WearWatch.Plant.Webhooks;
using WearWatch.Worker.Jobs;

namespace WearWatch.Worker.Webhooks;

/// <summary>Brings what waits to the receivers, again and again; to each one event after the other.</summary>
public sealed class WebhookCarrier(
    WebhookBox box, WebhookClient client, IOptions<WebhookOptions> options, TimeProvider clock, ILogger<WebhookCarrier> logger)
    : JobLoop("sending of webhooks", options.Value.Every, clock, logger)
{
    /// <summary>Receivers that are sent to at the same time: one that is slow holds up no other.</summary>
    private const int AtOnce = 4;

    protected override Task RunOnceAsync(CancellationToken ct) =>
        Task.WhenAll(Enumerable.Range(0, AtOnce).Select(_ => SendAsync(ct)));

    /// <summary>Sends until nothing waits whose time has come.</summary>
    private async Task SendAsync(CancellationToken ct)
    {
        while (await box.TakeAsync(ct) is var (address, delivery))
        {
            var outcome = await client.SendAsync(address, delivery, ct);
            if (outcome is DeliveryOutcome.Failed failed) logger.WebhookNotTaken(address.Name, failed.Why);
            await box.KeepAsync(address, delivery, outcome);
        }
    }
}
