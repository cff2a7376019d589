using System.Net;
using System.Net.Sockets;
using System.Security.Authentication;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using MQTTnet;
using MQTTnet.Protocol;
using MQTTnet.Server;
using WearWatch.Plant.Sparkplug;
using WearWatch.Plant.Telemetry;

namespace WearWatch.Worker.Mqtt;

/// <summary>A broker inside this process, for a plant with a single PC.</summary>
/// <remarks>
/// Its sessions live in memory only. So telemetry does not wait in them: a message is committed to disk before the broker
/// acknowledges it to the sender, and a sender that got no acknowledgement sends it again.
/// </remarks>
public sealed class EmbeddedBroker(
    IntakeTopics topics, BrokerVoice voice, IOptions<MqttOptions> mqtt, TimeProvider clock, ILogger<EmbeddedBroker> logger)
        : IHostedService, IDisposable
{
    private readonly CancellationTokenSource stopping = new();
    private IDisposable? speaking;
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
        speaking = voice.By(SayAsync);
        if (mqtt.Value.SparkplugHostId is { Length: > 0 } host)
            await SayAsync(new MqttApplicationMessage
            {
                Topic = SparkplugTopic.StateOf(host),
                PayloadSegment = SparkplugState.Payload(isOnline: true, clock.GetUtcNow()),
                Retain = true,
            }, cancellationToken);
        logger.BrokerListens(mqtt.Value.EmbeddedAddress, Port);
    }

    public async Task StopAsync(CancellationToken cancellationToken)
    {
        await stopping.CancelAsync();
        speaking?.Dispose();
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
        try
        {
            await topics.StoreAsync(
                new Arrival(publish.ApplicationMessage.Topic, MqttIntake.Copy(publish.ApplicationMessage), clock.GetUtcNow()),
                stopping.Token);
        }
        catch (OperationCanceledException)
        {
            publish.ProcessPublish = false;
            publish.CloseConnection = true; // no acknowledgement: the sender keeps the message
        }
    }

    private Task SayAsync(MqttApplicationMessage message, CancellationToken ct) =>
        server?.InjectApplicationMessage(new InjectedMqttApplicationMessage(message), ct) ?? Task.CompletedTask;

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
