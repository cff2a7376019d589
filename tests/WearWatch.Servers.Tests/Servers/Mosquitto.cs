using System.Net;
using System.Net.Sockets;

namespace WearWatch.Servers.Tests.Servers;

/// <summary>The MQTT broker of the Debian package mosquitto, on a free port.</summary>
internal sealed class Mosquitto : IAsyncDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wear-mosquitto");
    private readonly ServerProcess server;

    /// <summary>Sets a broker up.</summary>
    /// <param name="savesEachChange">
    /// Whether it writes its queues to disk at each change, so that a kill loses none of what it acknowledged.
    /// </param>
    public Mosquitto(bool savesEachChange = false)
    {
        var settings = Path.Combine(folder.FullName, "mosquitto.conf");
        File.WriteAllText(settings, FormattableString.Invariant(
            $"""
            listener {Port} 127.0.0.1
            allow_anonymous true
            user {Environment.UserName}
            persistence true
            persistence_location {folder.FullName}/
            max_queued_messages 0
            max_inflight_messages 1000
            {(savesEachChange ? "autosave_on_changes true\nautosave_interval 1" : "")}
            """) + "\n");
        const string installed = "/usr/sbin/mosquitto";
        server = new ServerProcess("mosquitto", [File.Exists(installed) ? installed : "mosquitto", "-c", settings], AnswersAsync);
    }

    /// <summary>The port on which it listens; the same after a restart.</summary>
    public int Port { get; } = FreePort.Find();

    public Task StartAsync(CancellationToken ct = default) => server.StartAsync(ct);

    /// <summary>Ends it as a power cut would.</summary>
    public Task KillAsync(CancellationToken ct = default) => server.KillAsync(ct);

    public async ValueTask DisposeAsync()
    {
        await server.DisposeAsync();
        folder.Delete(recursive: true);
    }

    private async Task<bool> AnswersAsync(CancellationToken ct)
    {
        using var client = new TcpClient();
        try
        {
            await client.ConnectAsync(IPAddress.Loopback, Port, ct);
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }
}
