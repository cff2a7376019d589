using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using MQTTnet;
using MQTTnet.Protocol;
using WearWatch.Plant.Telemetry;
using WearWatch.Worker.Mqtt;
using WearWatch.Worker.Tests.Sparkplug;

namespace WearWatch.Browser.Tests;

/// <summary>A person maps signals of foreign machines: looks at what comes, tries, saves, and sees hours arrive.</summary>
public sealed class MappingTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private static DateTimeOffset Now => TimeProvider.System.GetUtcNow();

    [Fact]
    public async Task A_foreign_counter_is_mapped_by_clicks_in_less_than_two_minutes_and_its_hours_arrive()
    {
        await using var host = new DashboardHost { Settings = [("Mqtt:Embedded", "true"), ("Mqtt:EmbeddedPort", "0")] };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        await PlantFiles.TakeInAsync(host.Services, "FOREIGN");
        using var machine = new MqttClientFactory().CreateMqttClient();
        await machine.ConnectAsync(new MqttClientOptionsBuilder()
            .WithTcpServer("127.0.0.1", host.Services.GetRequiredService<EmbeddedBroker>().Port).Build(), Ct);
        var page = desk.Page;
        await desk.GoAsync("/data-sources");
        var watch = Stopwatch.StartNew();
        await page.GetByRole(AriaRole.Link, new() { Name = "Signal mappings" }).ClickAsync();
        await Assertions.Expect(page.GetByText("None yet. Machines that publish")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "New mapping" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Listen", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("Listening to # for 3 minutes.")).ToBeVisibleAsync();
        var use = page.GetByRole(AriaRole.Button, new() { Name = "Use message of site/A/FOREIGN-1/hours" });
        for (var i = 0; i < 60 && await use.CountAsync() == 0; i++)
        {
            await PublishAsync(machine, 100, Now);
            await Task.Delay(500, Ct);
        }

        await use.First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Value at $.run.tenths" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Path to the value")).ToHaveValueAsync("$.run.tenths");
        await page.GetByLabel("Name of the mapping").FillAsync("Press hours");
        await page.GetByLabel("Topic").FillAsync("site/{line}/{machine}/hours");
        await page.GetByLabel("Time in the message").SelectOptionAsync("milliseconds since 1970");
        await page.GetByLabel("Path to the time").FillAsync("$.t");
        await page.GetByLabel("Times").FillAsync("0.1");
        await page.GetByLabel("Goes to chain").FillAsync("{machine}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Try it" }).ClickAsync();
        await Assertions.Expect(page.GetByText(new Regex("^10\\.0 h for FOREIGN-1 at ")).First).ToBeVisibleAsync();
        Assert.Empty(await desk.BarriersAsync());
        await desk.PictureAsync("mapping");
        await SaveAsync(page, 1);
        Assert.True(watch.Elapsed < TimeSpan.FromMinutes(2), $"{watch.Elapsed}");

        var start = Now.AddHours(-2);
        for (var i = 0; i <= 12; i++) await PublishAsync(machine, 1000 + i * 1.6, start.AddMinutes(10 * i));
        await desk.GoAsync("/chains/FOREIGN-1/signals");
        var hours = page.Locator("table[data-list=running]");
        for (var i = 0; i < 60 && await hours.CountAsync() == 0; i++)
        {
            await Task.Delay(500, Ct);
            await page.ReloadAsync();
        }

        await Assertions.Expect(hours.GetByText("hour counter").First).ToBeVisibleAsync();
        await desk.GoAsync("/data-sources/mappings");
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_mapping_is_changed_by_versions_and_says_at_each_field_what_it_cannot_read()
    {
        await using var host = new DashboardHost { StandsStill = true };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        await PlantFiles.TakeInAsync(host.Services, "WORDS");
        var page = desk.Page;
        await desk.GoAsync("/data-sources/mapping");
        await page.GetByLabel("Topic").FillAsync("spBv1.0/Mill/NDATA/N1");
        await page.GetByLabel("Path to the value").FillAsync("hours");
        await page.GetByLabel("Times").FillAsync("0");
        await page.GetByLabel("Plus").FillAsync("much");
        await page.GetByLabel("Path to the unit").FillAsync("$.[");
        await page.GetByLabel("Words for chains").FillAsync("a word");
        var tryIt = page.GetByRole(AriaRole.Button, new() { Name = "Try it" });
        await tryIt.ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToHaveCountAsync(7);
        await Assertions.Expect(page.GetByText("These topics are Sparkplug's")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("Character 1: $ is missing.")).ToBeVisibleAsync();
        await page.GetByLabel("Name of the mapping").FillAsync("Kiln");
        await page.GetByLabel("Topic").FillAsync("kiln/{unit}/temperature");
        await page.GetByLabel("Path to the value").FillAsync("$.value");
        await page.GetByLabel("Kind of signal").SelectOptionAsync("temperature");
        await page.GetByLabel("Times").FillAsync("1");
        await page.GetByLabel("Plus").FillAsync("0.5");
        await page.GetByLabel("Path to the unit").FillAsync("$.unit");
        await page.GetByLabel("Goes to chain").FillAsync("{unit}");
        await page.GetByLabel("Words for chains").FillAsync("7 = WORDS-1");
        await tryIt.ClickAsync();
        await Assertions.Expect(page.GetByText("Nothing came yet that this mapping would read.")).ToBeVisibleAsync();
        await SaveAsync(page, 1);
        var taken = await TakeAsync(host, new Arrival("kiln/7/temperature", """{"value":100,"unit":"Cel"}"""u8.ToArray()));
        Assert.Equal(new TelemetryTaken(1, 0, 0), taken);

        await page.GetByLabel("Plus").FillAsync("0");
        await page.GetByLabel("This mapping reads").UncheckAsync();
        await tryIt.ClickAsync();
        await SaveAsync(page, 2);
        await page.GetByRole(AriaRole.Link, new() { Name = "Show version 1" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Plus")).ToHaveValueAsync("0.5");
        await Assertions.Expect(page.GetByLabel("This mapping reads")).ToBeCheckedAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Signal mappings" }).ClickAsync();
        await Assertions.Expect(page.GetByText("switched off")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Kiln" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Kiln", Exact = true })).ToBeVisibleAsync();
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_metric_of_an_edge_node_is_mapped_and_its_death_shows_at_the_sources_and_at_its_chain()
    {
        await using var host = new DashboardHost { StandsStill = true };
        await using var desk = await screen.AtDeskAsync(address: host.Listen());
        await PlantFiles.TakeInAsync(host.Services, "NODE");
        var page = desk.Page;
        await TakeAsync(host, SparkplugMessage.NodeBirth(1, 100, Now.AddMinutes(-5)));
        await desk.GoAsync("/data-sources/mapping");
        await page.GetByLabel("Source of the signal").SelectOptionAsync("Sparkplug metric");
        await page.GetByRole(AriaRole.Button, new() { Name = "Use metric Mill/N1 Drive/Hours" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Group, node, device")).ToHaveValueAsync("Mill/N1");
        await Assertions.Expect(page.GetByRole(AriaRole.Textbox, new() { Name = "Metric" })).ToHaveValueAsync("Drive/Hours");
        await page.GetByLabel("Name of the mapping").FillAsync("Node hours");
        await page.GetByLabel("Goes to chain").FillAsync("NODE-1");
        await page.GetByRole(AriaRole.Button, new() { Name = "Try it" }).ClickAsync();
        await Assertions.Expect(page.GetByText("100.0 h for NODE-1 at ")).ToBeVisibleAsync();
        await SaveAsync(page, 1);
        Assert.Empty(await desk.BarriersAsync());

        var data = SparkplugMessage.NodeData(101, Now.AddMinutes(-2), 1);
        Assert.Equal(new TelemetryTaken(1, 0, 0), await TakeAsync(host, data));
        await TakeAsync(host, SparkplugMessage.NodeDeath(1, Now));
        await desk.GoAsync("/data-sources");
        await Assertions.Expect(page.GetByText("dead since ")).ToBeVisibleAsync();
        Assert.Empty(await desk.BarriersAsync());
        await desk.GoAsync("/chains/NODE-1/signals");
        await Assertions.Expect(page.GetByText("A dead node sends nothing of this chain.")).ToBeVisibleAsync();
        await TakeAsync(host, SparkplugMessage.NodeBirth(2, 102, Now));
        await page.ReloadAsync();
        await Assertions.Expect(page.GetByText("online since ")).ToBeVisibleAsync();
        Assert.Empty(await desk.BarriersAsync());
        Assert.Empty(desk.Complaints);
    }

    [Theory]
    [InlineData("/data-sources/mappings", "h1")]
    [InlineData("/data-sources/mapping", "form, .panel")]
    public async Task On_a_phone_in_German_and_in_the_dark_nothing_is_cut(string path, string whole)
    {
        foreach (var (locale, dark) in new[] { ("de", false), ("en", true) })
        {
            await using var phone = await screen.OnPhoneAsync(dark: dark, locale: locale);
            await phone.GoAsync(path);
            await phone.Page.Locator(whole).First.WaitForAsync();
            await phone.PictureAsync($"{path.Trim('/').Replace('/', '-')}-phone-{locale}");
            Assert.Equal("", await phone.OverTheEdgeAsync());
            Assert.Empty(await LanguageLookTests.CutAsync(phone.Page));
            Assert.Empty(await phone.BarriersAsync());
            Assert.Empty(phone.Complaints);
        }
    }

    private static async Task SaveAsync(IPage page, int version)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText($"Saved as version {version}. It reads from now on.")).ToBeVisibleAsync();
    }

    private static Task<TelemetryTaken> TakeAsync(DashboardHost host, Arrival arrival) =>
        host.Services.GetRequiredService<TelemetryDesk>().TakeAsync([arrival], Ct);

    private static Task<MqttClientPublishResult> PublishAsync(IMqttClient machine, double tenths, DateTimeOffset at) =>
        machine.PublishAsync(new MqttApplicationMessage
        {
            Topic = "site/A/FOREIGN-1/hours",
            PayloadSegment = Encoding.UTF8.GetBytes(FormattableString.Invariant(
                $$"""{"run":{"tenths":{{tenths}}},"t":{{at.ToUnixTimeMilliseconds()}}}""")),
            QualityOfServiceLevel = MqttQualityOfServiceLevel.AtLeastOnce,
        }, Ct);
}
