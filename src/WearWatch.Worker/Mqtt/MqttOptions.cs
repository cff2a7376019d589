using System.ComponentModel.DataAnnotations;
using System.Net;
using MQTTnet;
using MQTTnet.Formatter;

namespace WearWatch.Worker.Mqtt;

/// <summary>The settings of the section <c>WearWatch:Mqtt</c>.</summary>
public sealed class MqttOptions : IValidatableObject
{
    /// <summary>The broker to take telemetry from; empty for none.</summary>
    public string Server { get; set; } = "";

    /// <summary>The broker's port.</summary>
    [Range(1, 65535)]
    public int Port { get; set; } = 1883;

    /// <summary>Whether the connection is encrypted; the broker's certificate has to be one that this machine trusts.</summary>
    public bool UseTls { get; set; }

    public string UserName { get; set; } = "";

    public string Password { get; set; } = "";

    /// <summary>
    /// The name under which the broker keeps messages for this worker while it is away. Each worker needs its own.
    /// </summary>
    [Required(AllowEmptyStrings = false)]
    public string ClientId { get; set; } = "wearwatch-intake";

    /// <summary>
    /// Workers of one name share the messages among them (MQTT 5 shared subscription); empty for a worker that takes all.
    /// </summary>
    public string SharedBy { get; set; } = "";

    /// <summary>
    /// The name of this host application in Sparkplug B, which turns it on; empty for off. Of several workers one has it.
    /// </summary>
    [RegularExpression("[^/+#]*", ErrorMessage = "Mqtt:SparkplugHostId is one level of a topic: without / + #.")]
    public string SparkplugHostId { get; set; } = "";

    /// <summary>So long the broker keeps messages for a worker that is away; an hour to a year.</summary>
    [Range(typeof(TimeSpan), "01:00:00", "365.00:00:00", ConvertValueInInvariantCulture = true,
        ParseLimitsInInvariantCulture = true)]
    public TimeSpan KeptWhileAway { get; set; } = TimeSpan.FromDays(30);

    /// <summary>Messages that may be on their way unacknowledged.</summary>
    [Range(1, 65535)]
    public ushort MostUnacknowledged { get; set; } = 1000;

    /// <summary>Whether this process is a broker itself, for a plant with a single PC.</summary>
    public bool Embedded { get; set; }

    /// <summary>The embedded broker's port; 0 takes a free one.</summary>
    [Range(0, 65535)]
    public int EmbeddedPort { get; set; } = 1883;

    /// <summary>
    /// The address on which the embedded broker listens; loopback unless sensors on the network are to reach it.
    /// </summary>
    [Required(AllowEmptyStrings = false)]
    public string EmbeddedAddress { get; set; } = "127.0.0.1";

    /// <summary>
    /// A certificate with its key (PKCS #12, without password, readable by WearWatch's own user) by which the embedded broker
    /// speaks TLS; empty for clear text.
    /// </summary>
    public string EmbeddedCertificate { get; set; } = "";

    /// <summary>How a client reaches the broker.</summary>
    internal MqttClientOptionsBuilder Client(string clientId)
    {
        var options = new MqttClientOptionsBuilder().WithTcpServer(Server, Port).WithProtocolVersion(MqttProtocolVersion.V500)
            .WithClientId(clientId);
        if (UserName.Length > 0) options.WithCredentials(UserName, Password);
        if (UseTls) options.WithTlsOptions(tls => tls.UseTls());
        return options;
    }

    /// <summary>What the settings together must not say: what the network reaches asks for a password.</summary>
    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (!Embedded) yield break;
        if (!IPAddress.TryParse(EmbeddedAddress, out var address))
            yield return new($"Mqtt:EmbeddedAddress '{EmbeddedAddress}' is no IP address, such as 127.0.0.1.");
        else if (!IPAddress.IsLoopback(address) && (UserName.Length == 0 || Password.Length < 12))
            yield return new("Mqtt:EmbeddedAddress can be reached from other machines: set Mqtt:UserName, and Mqtt:Password of "
                + "12 characters or more.");
        if (EmbeddedCertificate.Length > 0 && !File.Exists(EmbeddedCertificate))
            yield return new($"Mqtt:EmbeddedCertificate: there is no file {EmbeddedCertificate}.");
    }
}
