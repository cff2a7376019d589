using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace WearWatch.Worker.Tests.Webhooks;

/// <summary>A program that takes webhooks: a real web server, which can fail, redirect or want no more.</summary>
public sealed class WebhookReceiver : IAsyncDisposable
{
    private readonly ConcurrentQueue<Arrived> arrived = [];
    private readonly HttpListener listener = new();
    private int tries;

    public WebhookReceiver()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        Url = $"http://127.0.0.1:{((IPEndPoint)probe.LocalEndpoint).Port}/hooks";
    }

    /// <summary>What it answers to the n-th try, from 1; 204 unless a test says otherwise.</summary>
    public Func<int, HttpListenerResponse, int> Answer { get; set; } = (_, _) => 204;

    public string Url { get; }

    /// <summary>All that came, in order, with what it was answered.</summary>
    public IReadOnlyList<Arrived> All => [.. arrived];

    /// <summary>What it took.</summary>
    public IReadOnlyList<Arrived> Taken => [.. arrived.Where(a => a.Status is >= 200 and < 300)];

    public void Start()
    {
        listener.Prefixes.Add(new Uri(Url).GetLeftPart(UriPartial.Authority) + "/");
        listener.Start();
        _ = TakeAllAsync();
    }

    public ValueTask DisposeAsync()
    {
        listener.Close();
        return ValueTask.CompletedTask;
    }

    private async Task TakeAllAsync()
    {
        while (listener.IsListening)
        {
            try
            {
                await TakeAsync(await listener.GetContextAsync());
            }
            catch (Exception e) when (e is HttpListenerException or ObjectDisposedException or IOException)
            {
                // The sender was killed, or the test is over.
            }
        }
    }

    private async Task TakeAsync(HttpListenerContext http)
    {
        using var reader = new StreamReader(http.Request.InputStream, Encoding.UTF8);
        var body = await reader.ReadToEndAsync();
        var status = Answer(Interlocked.Increment(ref tries), http.Response);
        var headers = http.Request.Headers;
        arrived.Enqueue(new Arrived(
            http.Request.Url!.AbsolutePath,
            headers.AllKeys.ToDictionary(k => k!, k => headers[k]!, StringComparer.OrdinalIgnoreCase), body, status));
        http.Response.StatusCode = status;
        http.Response.Close();
    }

    /// <summary>A request that came.</summary>
    public sealed record Arrived(string Path, IReadOnlyDictionary<string, string> Headers, string Body, int Status)
    {
        public string Id => Headers["webhook-id"];
    }
}
