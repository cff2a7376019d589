using System.Net.Mime;
using System.Security.Cryptography;
using System.Text;
using CloudNative.CloudEvents;
using CloudNative.CloudEvents.SystemTextJson;

namespace WearWatch.Worker.Tests.Webhooks;

/// <summary>What a receiver makes of a request, by the specifications alone.</summary>
internal static class ReceivedEvent
{
    /// <summary>The signature as a receiver works it out, apart from the code that signs.</summary>
    public static string Signature(string secret, WebhookReceiver.Arrived arrived)
    {
        var key = Convert.FromBase64String(secret.Split('_')[1]);
        using var mac = new HMACSHA256(key);
        var text = string.Join('.', arrived.Id, arrived.Headers["webhook-timestamp"], arrived.Body);
        return "v1," + Convert.ToBase64String(mac.ComputeHash(Encoding.UTF8.GetBytes(text)));
    }

    /// <summary>The event as the CNCF's own library reads it.</summary>
    public static CloudEvent Decoded(WebhookReceiver.Arrived arrived) => new JsonEventFormatter().DecodeStructuredModeMessage(
        Encoding.UTF8.GetBytes(arrived.Body), new ContentType(arrived.Headers["content-type"]), null);
}
