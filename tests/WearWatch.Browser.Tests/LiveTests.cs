using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using MQTTnet;
using MQTTnet.Protocol;
using WearWatch.Worker.Mqtt;

namespace WearWatch.Browser.Tests;

/// <summary>What a machine publishes is on the screen of whoever looks at its chain, without a reload.</summary>
public sealed class LiveTests(Screen screen, ITestOutputHelper output)
{
    private const int Lengths = 3;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Each_length_that_is_published_changes_the_chains_page_without_a_reload()
    {
        await using var host = new Listening();
        host.UseKestrel(0);
        host.StartServer();
        await PlantFiles.TakeInAsync(host.Services, "LIVE");
        using var machine = new MqttClientFactory().CreateMqttClient();
        await machine.ConnectAsync(new MqttClientOptionsBuilder()
            .WithTcpServer("127.0.0.1", host.Services.GetRequiredService<EmbeddedBroker>().Port).Build(), Ct);
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        await desk.GoAsync("/chains/LIVE-1");

        // What a page that loads again would forget. How long it takes says more of the machine than of the program: it is told.
        await desk.Page.EvaluateAsync("() => window.stayed = true");
        for (var i = 0; i < Lengths; i++)
        {
            var length = (1234.4 + 0.2 * i).ToString("0.0", CultureInfo.InvariantCulture);
            var watch = Stopwatch.StartNew();
            await PublishAsync(machine, length);
            await Assertions.Expect(desk.Page.GetByText($"{length} mm").First).ToBeVisibleAsync();
            output.WriteLine($"from publication to the screen: {watch.Elapsed.TotalSeconds:0.00} s");
        }

        Assert.True(await desk.Page.EvaluateAsync<bool>("() => window.stayed === true"));
        await desk.PictureAsync("live-chain");
        await desk.GoAsync("/chains/LIVE-1/signals");
        await desk.PictureAsync("live-signals");
        Assert.Empty(await desk.BarriersAsync());
        await PublishAsync(machine, "\"poison\"");
        await desk.GoAsync("/data-sources");
        await Assertions.Expect(desk.Page.GetByText("length_mm").First).ToBeVisibleAsync();
        await desk.PictureAsync("live-arrivals");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }

    private static Task<MqttClientPublishResult> PublishAsync(IMqttClient machine, string length)
    {
        var now = TimeProvider.System.GetUtcNow().UtcDateTime;
        return machine.PublishAsync(new MqttApplicationMessage
        {
            Topic = "wearwatch/v1/plant/LIVE-1/length",
            PayloadSegment = System.Text.Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture,
                $"{{\"id\":\"{Guid.NewGuid():N}\","
                + $"\"at\":\"{now:yyyy-MM-dd'T'HH:mm:ss.fff'Z'}\",\"pitches\":48,\"length_mm\":{length}}}")),
            QualityOfServiceLevel = MqttQualityOfServiceLevel.AtLeastOnce,
        }, Ct);
    }

    /// <summary>A dashboard that is a broker too.</summary>
    private sealed class Listening : WebApplicationFactory<Program>
    {
        private readonly string folder = Directory.CreateTempSubdirectory("wearwatch-live-").FullName;

        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            builder.UseEnvironment("Development");
            builder.UseSetting("WearWatch:DataFolder", folder);
            builder.UseSetting("WearWatch:Mqtt:Embedded", "true");
            builder.UseSetting("WearWatch:Mqtt:EmbeddedPort", "0");
            builder.UseSetting("Logging:LogLevel:Default", "Warning");
        }

        protected override void Dispose(bool disposing)
        {
            base.Dispose(disposing);
            if (disposing && Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
        }
    }
}
