using System.ComponentModel.DataAnnotations;
using WearWatch.Worker.Mqtt;

namespace WearWatch.Worker.Tests.Starting;

/// <summary>A broker that the network reaches asks for a password, or the program does not start.</summary>
public sealed class EmbeddedBrokerSettingsTests
{
    [Theory]
    [InlineData("127.0.0.1", "", "", true)]
    [InlineData("::1", "", "", true)]
    [InlineData("0.0.0.0", "", "", false)]
    [InlineData("0.0.0.0", "mill", "short", false)]
    [InlineData("192.0.2.1", "mill", "twelve links of chain", true)]
    [InlineData("localhost", "", "", false)]
    public void Outside_of_loopback_a_password_is_needed(string address, string user, string password, bool starts)
    {
        var options = new MqttOptions { Embedded = true, EmbeddedAddress = address, UserName = user, Password = password };
        Assert.Equal(starts, Validator.TryValidateObject(options, new ValidationContext(options), null, true));
    }

    [Fact]
    public void A_certificate_that_is_not_there_is_told()
    {
        var options = new MqttOptions { Embedded = true, EmbeddedCertificate = "/nowhere/broker.pfx" };
        Assert.False(Validator.TryValidateObject(options, new ValidationContext(options), null, true));
    }
}
