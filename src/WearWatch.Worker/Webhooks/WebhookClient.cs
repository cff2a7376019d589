using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using WearWatch.Plant.Webhooks;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Webhooks;

/// <summary>Sends an event to a receiver by HTTP: once, along no redirect, to no address that webhooks may not go to.</summary>
/// <remarks>
/// A name is looked up once, judged, and the connection made to what was judged: it cannot come to mean another address in
/// between. Of an answer nothing but the status and Retry-After is read, so that nobody reads inner pages by way of the log.
/// </remarks>
public sealed class WebhookClient : IDisposable
{
    /// <summary>A receiver that needs longer takes it first and works afterwards.</summary>
    private const int PatienceS = 10;

    private static readonly HttpRequestOptionsKey<IPAddress[]> judged = new("judged addresses");
    private static readonly MediaTypeHeaderValue cloudEvent = new("application/cloudevents+json", "utf-8");
    private readonly WebhookHosts hosts;
    private readonly TimeProvider clock;
    private readonly HttpClient http;

    public WebhookClient(WebhookHosts hosts, TimeProvider clock)
    {
        (this.hosts, this.clock) = (hosts, clock);
        http = new HttpClient(new SocketsHttpHandler
        {
            AllowAutoRedirect = false,
            UseProxy = false,
            UseCookies = false,
            PooledConnectionLifetime = TimeSpan.FromMinutes(2),
            ConnectCallback = ConnectAsync,
        })
        {
            Timeout = Timeout.InfiniteTimeSpan,
        };
        http.DefaultRequestHeaders.UserAgent.ParseAdd("WearWatch");
    }

    /// <summary>Sends an event.</summary>
    /// <returns>What became of it; any failure is to be tried again.</returns>
    public async Task<DeliveryOutcome> SendAsync(WebhookAddressRow address, WebhookDeliveryRow delivery, CancellationToken ct)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(ct);
        patience.CancelAfter(TimeSpan.FromSeconds(PatienceS));
        try
        {
            var url = new Uri(address.Url);
            var addresses = await Dns.GetHostAddressesAsync(url.DnsSafeHost, patience.Token);
            if (addresses.Length == 0 || !addresses.All(hosts.Allows)) return DeliveryOutcome.Closed;
            using var request = Request(url, address, delivery);
            request.Options.Set(judged, addresses);
            using var answer = await http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, patience.Token);
            return Outcome(answer);
        }
        catch (OperationCanceledException) when (!ct.IsCancellationRequested)
        {
            return DeliveryOutcome.Unanswered(PatienceS);
        }
        catch (Exception e) when (e is HttpRequestException or SocketException or IOException)
        {
            return DeliveryOutcome.Unreached(e.GetBaseException().Message);
        }
    }

    public void Dispose() => http.Dispose();

    private HttpRequestMessage Request(Uri url, WebhookAddressRow address, WebhookDeliveryRow delivery)
    {
        var now = clock.GetUtcNow();
        var request = new HttpRequestMessage(HttpMethod.Post, url)
        {
            Content = new StringContent(delivery.Body, cloudEvent),
        };
        request.Headers.Add("webhook-id", delivery.EventId);
        request.Headers.Add("webhook-timestamp", now.ToUnixTimeSeconds().ToString(CultureInfo.InvariantCulture));
        request.Headers.Add("webhook-signature", WebhookSecret.Sign(address, delivery.EventId, now, delivery.Body));
        return request;
    }

    private DeliveryOutcome Outcome(HttpResponseMessage answer)
    {
        var asked = answer.Headers.RetryAfter;
        return DeliveryOutcome.Answered((int)answer.StatusCode, asked?.Delta ?? (asked?.Date - clock.GetUtcNow()));
    }

    private static async ValueTask<Stream> ConnectAsync(SocketsHttpConnectionContext context, CancellationToken ct)
    {
        context.InitialRequestMessage.Options.TryGetValue(judged, out var addresses);
        var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        try
        {
            await socket.ConnectAsync(addresses!, context.DnsEndPoint.Port, ct);
            return new NetworkStream(socket, ownsSocket: true);
        }
        catch
        {
            socket.Dispose();
            throw;
        }
    }
}
