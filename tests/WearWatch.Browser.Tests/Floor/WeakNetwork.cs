using System.Net;
using System.Net.Sockets;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What a network does to a request.</summary>
internal enum Signal
{
    Good,
    Refuses,
    Hangs,
    CutsAfterRequest,
    CutsBeforeAnswer,
    Trickles,
}

/// <summary>
/// A network between a phone and its server: it forwards bytes, and does with them what its signal says. The browser takes it for
/// its proxy, so that the server's address stays the server's.
/// </summary>
internal sealed class WeakNetwork : IAsyncDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource ended = new();
    private readonly int serverPort;
    private CancellationTokenSource spell = new();
    private Signal signal;

    /// <param name="server">The server's address.</param>
    public WeakNetwork(string server)
    {
        serverPort = new Uri(server).Port;
        listener.Start();
        _ = AcceptAsync();
    }

    /// <summary>What a browser has to go through, also for this machine's own addresses.</summary>
    public Proxy Between => new()
    {
        Server = $"http://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}",
        Bypass = "<-loopback>",
    };

    /// <summary>What it does from now on; connections of the spell before end with it.</summary>
    public Signal Signal
    {
        get => signal;
        set
        {
            signal = value;
            var before = Interlocked.Exchange(ref spell, new CancellationTokenSource());
            before.Cancel();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await ended.CancelAsync();
        await spell.CancelAsync();
        listener.Dispose();
    }

    private async Task AcceptAsync()
    {
        while (!ended.IsCancellationRequested)
        {
            try
            {
                var phone = await listener.AcceptTcpClientAsync(ended.Token);
                _ = ServeAsync(phone, signal, spell.Token);
            }
            catch (Exception e) when (e is OperationCanceledException or SocketException or ObjectDisposedException)
            {
                return;
            }
        }
    }

    private async Task ServeAsync(TcpClient phone, Signal now, CancellationToken ct)
    {
        try
        {
            using (phone)
            {
                if (now == Signal.Refuses) return;
                if (now == Signal.Hangs)
                {
                    await Task.Delay(Timeout.Infinite, ct);
                    return;
                }

                using var server = new TcpClient();
                await server.ConnectAsync(IPAddress.Loopback, serverPort, ct);
                await (now == Signal.CutsAfterRequest
                    ? CutAfterRequestAsync(phone.GetStream(), server.GetStream(), ct)
                    : Task.WhenAny(
                        CopyAsync(phone.GetStream(), server.GetStream(), Signal.Good, ct),
                        CopyAsync(server.GetStream(), phone.GetStream(), now, ct)));
            }
        }
        catch (Exception e) when (e is OperationCanceledException or SocketException or IOException or ObjectDisposedException)
        {
            // That is what such a network does.
        }
    }

    /// <summary>The server gets the whole request and the time to do it; the phone hears nothing of it.</summary>
    private static async Task CutAfterRequestAsync(NetworkStream phone, NetworkStream server, CancellationToken ct)
    {
        var bytes = new byte[16_384];
        do
        {
            var read = await phone.ReadAsync(bytes, ct);
            if (read == 0) return;
            await server.WriteAsync(bytes.AsMemory(0, read), ct);
            await Task.Delay(20, ct);
        }
        while (phone.DataAvailable);
        phone.Close();
        while (await server.ReadAsync(bytes, ct) > 0) await Task.Yield();
    }

    private static async Task CopyAsync(NetworkStream from, NetworkStream to, Signal how, CancellationToken ct)
    {
        var bytes = new byte[how == Signal.Trickles ? 1 : 16_384];
        while (await from.ReadAsync(bytes, ct) is > 0 and var read)
        {
            if (how == Signal.CutsBeforeAnswer) return;
            await to.WriteAsync(bytes.AsMemory(0, read), ct);
            if (how == Signal.Trickles) await Task.Delay(1000, ct);
        }
    }
}
