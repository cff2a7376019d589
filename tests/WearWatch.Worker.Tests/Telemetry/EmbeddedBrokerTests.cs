using System.Text;
using Microsoft.EntityFrameworkCore;
using MQTTnet;
using MQTTnet.Formatter;
using MQTTnet.Protocol;
using WearWatch.Worker.Mqtt;

namespace WearWatch.Worker.Tests.Telemetry;

public sealed class EmbeddedBrokerTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_the_embedded_broker_acknowledges_is_committed_and_poison_is_acknowledged_too()
    {
        await using var plant = await TestPlant.OpenAsync(("Mqtt:Embedded", "true"), ("Mqtt:EmbeddedPort", "0"));
        await plant.AddChainAsync();
        await plant.StartAsync();
        using var client = await ConnectAsync(plant);
        await using var db = plant.Db();
        for (var i = 1; i <= 20; i++)
        {
            Assert.True((await PublishAsync(client, Sent.Temperature(i))).IsSuccess);
            Assert.Equal(i, await db.Telemetry.CountAsync(Ct)); // it is there at the moment of the acknowledgement
        }

        Assert.True((await PublishAsync(client, Sent.Raw("wearwatch/v1/plant/C1/running", "poison"))).IsSuccess);
        Assert.Equal("poison", Encoding.UTF8.GetString((await db.SetAside.SingleAsync(Ct)).Payload));
    }

    [Fact]
    public async Task Whoever_does_not_know_the_password_is_not_let_in()
    {
        await using var plant = await TestPlant.OpenAsync(
            ("Mqtt:Embedded", "true"), ("Mqtt:EmbeddedPort", "0"), ("Mqtt:UserName", "mill"), ("Mqtt:Password", "secret"));
        await plant.StartAsync();
        await Assert.ThrowsAnyAsync<Exception>(() => ConnectAsync(plant));
        using var client = await ConnectAsync(plant, options => options.WithCredentials("mill", "secret"));
        Assert.True(client.IsConnected);
    }

    private static async Task<IMqttClient> ConnectAsync(TestPlant plant, Action<MqttClientOptionsBuilder>? more = null)
    {
        var options = new MqttClientOptionsBuilder().WithTcpServer("127.0.0.1", plant.Get<EmbeddedBroker>().Port)
            .WithProtocolVersion(MqttProtocolVersion.V500);
        more?.Invoke(options);
        var client = new MqttClientFactory().CreateMqttClient();
        var answer = await client.ConnectAsync(options.Build(), Ct);
        return answer.ResultCode == MqttClientConnectResultCode.Success
            ? client
            : throw new InvalidOperationException(answer.ReasonString);
    }

    private static Task<MqttClientPublishResult> PublishAsync(IMqttClient client, WearWatch.Plant.Telemetry.Arrival arrival) =>
        client.PublishAsync(new MqttApplicationMessage
        {
            Topic = arrival.Topic,
            PayloadSegment = new ArraySegment<byte>(arrival.Payload.ToArray()),
            QualityOfServiceLevel = MqttQualityOfServiceLevel.AtLeastOnce,
        }, Ct);
}
