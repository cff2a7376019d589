using System.Net;
using System.Net.Sockets;
using System.Security.Authentication;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using MQTTnet.Protocol;
using MQTTnet.Server;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Worker.Mqtt;

/// <summary>A broker inside this process, for a plant with a single PC.</summary>
/// <remarks>
/// Its sessions live in memory only. So telemetry does not wait in them: a message is committed to disk before the broker
/// acknowledges it to the sender, and a sender that got no acknowledgement sends it again.
/// </remarks>
public sealed class EmbeddedBroker(
    TelemetryPump pump, IOptions<MqttOptions> mqtt, IOptions<TelemetryOptions> telemetry, ILogger<EmbeddedBroker> logger)
        : IHostedService, IDisposable
{
    private readonly CancellationTokenSource stopping = new();
    private MqttServer? server;

    /// <summary>The port on which it listens; 0 while it does not.</summary>
    public int Port { get; private set; }

    public async Task StartAsync(CancellationToken cancellationToken)
    {
        if (!mqtt.Value.Embedded) return;
        var address = IPAddress.Parse(mqtt.Value.EmbeddedAddress);
        var isSix = address.AddressFamily == AddressFamily.InterNetworkV6;
        Port = mqtt.Value.EmbeddedPort > 0 ? mqtt.Value.EmbeddedPort : FreePort(address);
        var (four, six) = isSix ? (IPAddress.None, address) : (address, IPAddress.None);
        var options = new MqttServerOptionsBuilder();
        if (mqtt.Value.EmbeddedCertificate is { Length: > 0 } file)
        {
            options.WithoutDefaultEndpoint().WithEncryptedEndpoint().WithEncryptedEndpointPort(Port)
                .WithEncryptedEndpointBoundIPAddress(four).WithEncryptedEndpointBoundIPV6Address(six)
                .WithEncryptionSslProtocol(SslProtocols.None) // whatever the system takes for safe
                .WithEncryptionCertificate(X509CertificateLoader.LoadPkcs12FromFile(file, null));
        }
        else
        {
            options.WithDefaultEndpoint().WithDefaultEndpointPort(Port)
                .WithDefaultEndpointBoundIPAddress(four).WithDefaultEndpointBoundIPV6Address(six);
        }

        server = new MqttServerFactory().CreateMqttServer(options.Build());
        server.InterceptingPublishAsync += StoreAsync;
        server.ValidatingConnectionAsync += CheckAsync;
        await server.StartAsync();
        logger.BrokerListens(mqtt.Value.EmbeddedAddress, Port);
    }

    public async Task StopAsync(CancellationToken cancellationToken)
    {
        await stopping.CancelAsync();
        // A host may be told to stop twice at once, and the server must not.
        if (Interlocked.Exchange(ref server, null) is not { } running) return;
        await running.StopAsync();
        running.Dispose();
    }

    public void Dispose()
    {
        server?.Dispose();
        stopping.Dispose();
    }

    private async Task StoreAsync(InterceptingPublishEventArgs publish)
    {
        if (TelemetryTopic.Read(publish.ApplicationMessage.Topic)?.Plant != telemetry.Value.Plant) return;
        try
        {
            await pump.StoreAsync(
                new Arrival(publish.ApplicationMessage.Topic, MqttIntake.Copy(publish.ApplicationMessage)), stopping.Token);
        }
        catch (OperationCanceledException)
        {
            publish.ProcessPublish = false;
            publish.CloseConnection = true; // no acknowledgement: the sender keeps the message
        }
    }

    private Task CheckAsync(ValidatingConnectionEventArgs connection)
    {
        if (mqtt.Value.UserName.Length > 0
            && (connection.UserName != mqtt.Value.UserName || !IsSame(connection.Password, mqtt.Value.Password)))
            connection.ReasonCode = MqttConnectReasonCode.BadUserNameOrPassword;
        return Task.CompletedTask;
    }

    private static bool IsSame(string? told, string password) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(told ?? ""), Encoding.UTF8.GetBytes(password));

    private static int FreePort(IPAddress address)
    {
        using var listener = new TcpListener(address, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
