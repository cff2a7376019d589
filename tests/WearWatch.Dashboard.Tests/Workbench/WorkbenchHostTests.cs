using System.Net;
using System.Text.Json;
using WearWatch.Plant.Intake;

namespace WearWatch.Dashboard.Tests.Workbench;

public sealed class WorkbenchHostTests(DashboardHost host) : IClassFixture<DashboardHost>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/tools", "Gauge")]
    [InlineData("/more", "Settings")]
    [InlineData("/gauge", "Show an example")]
    [InlineData("/gauge?type=16B-1&pitches=24&length=617.5", "1.30 %")]
    [InlineData("/gauge?type=16Q&pitches=-1&length=x", "No chain type is called")]
    [InlineData("/drive?type=16A-1&teeth=19&driven_teeth=57&rpm=300&power=12&centre=1000", "118 pitches")]
    [InlineData("/drive?type=M112x160&teeth=8&driven_teeth=8&speed=76%20m/h&power=400%20hp&centre=24000", "This cannot be.")]
    [InlineData("/types?find=16B&compare=16B-1", "unverified")]
    [InlineData("/types?pitch_mm=nonsense", "not a number")]
    [InlineData("/measuring", "Measurement system analysis")]
    public async Task Every_calculator_answers_from_its_address_alone(string path, string says)
    {
        var answer = await host.CreateClient().GetAsync(path, Ct);
        var text = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Ct));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.DoesNotContain("could not be drawn", text, StringComparison.Ordinal);
        Assert.Contains(says, text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Units_are_remembered_and_lead_back_on_this_host_only()
    {
        using var client = host.CreateClient(new() { AllowAutoRedirect = false });
        var answer = await ChooseAsync(client, "/gauge?type=16B-1");
        Assert.Equal("/gauge?type=16B-1", answer.Headers.Location!.ToString());
        Assert.Contains(
            "wearwatch-units=in.hp.ms.c", Assert.Single(answer.Headers.GetValues("Set-Cookie")), StringComparison.Ordinal);
        Assert.Equal("/", (await ChooseAsync(client, "//elsewhere.example/")).Headers.Location!.ToString());

        client.DefaultRequestHeaders.Add("Cookie", "wearwatch-units=in.hp.ms.c");
        Assert.Contains("24.311 in over 24 pitches",
            await client.GetStringAsync("/gauge?type=16B-1&pitches=24&length=617.5&unit=mm", Ct), StringComparison.Ordinal);
    }

    // K-2 has a limit of 2 % on its card, set by the plant; the rule of 3 % holds beside it.
    [Fact]
    public async Task A_chains_page_shows_its_limits_with_their_reasons()
    {
        using var client = host.CreateClient();
        await host.Get<FileImport>().ImportAsync(SmallPlant.Files, null, Ct);
        var text = WebUtility.HtmlDecode(await client.GetStringAsync("/chains/K-2", Ct));
        Assert.Contains("Limits and reasons", text, StringComparison.Ordinal);
        Assert.Contains("governs</strong>: set by the plant", text, StringComparison.Ordinal);
        Assert.Contains("holds too: roller chain on a drive that can be adjusted", text, StringComparison.Ordinal);
        Assert.Contains("Sprockets:", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_api_gauges()
    {
        var gauge = await JsonAsync("/api/v1/gauge?type=16B-1&pitches=24&length=617.5");
        Assert.Equal(1.2959, gauge.GetProperty("elongation_pct").GetDouble(), 1e-4);
        Assert.Equal("within_limit", gauge.GetProperty("condition").GetString());
        Assert.Equal(
            100, gauge.GetProperty("budget").EnumerateArray().Sum(c => c.GetProperty("share_of_variance_pct").GetDouble()), 1e-9);
        Assert.True(gauge.GetProperty("proposal").GetProperty("good_enough").GetBoolean());
    }

    // Source: docs/references.md [8]: 200/N percent, 1.5 % for fixed centres.
    [Fact]
    public async Task The_api_tells_the_limit_and_what_else_holds()
    {
        var limit = await JsonAsync("/api/v1/limit?teeth=17,75&fixed_centres=yes");
        Assert.Equal(1.5, limit.GetProperty("limit_pct").GetDouble());
        Assert.Equal("fixed_centres", limit.GetProperty("reason").GetString());
        Assert.Contains(limit.GetProperty("also_hold").EnumerateArray(),
            l => Math.Abs(l.GetProperty("limit_pct").GetDouble() - 200.0 / 75) < 1e-9);
    }

    [Fact]
    public async Task The_api_works_out_a_drive_with_units_in_its_names()
    {
        var drive = await JsonAsync("/api/v1/drive?type=160-3&teeth=21&driven_teeth=63&rpm=400&power=400%20hp&pitches=120");
        Assert.Equal(427, drive.GetProperty("rating").GetProperty("rated_kw").GetDouble() / 0.745699872, 0.5);
        Assert.Equal(7.112, drive.GetProperty("speed_m_s").GetDouble(), 1e-9);
        Assert.Equal("oil_stream", drive.GetProperty("oil").GetProperty("feed").GetString());
    }

    [Fact]
    public async Task The_api_hands_out_types_with_their_sources()
    {
        var page = await JsonAsync("/api/v1/chain-types?find=16B&take=2");
        Assert.Equal(2, page.GetProperty("chain_types").GetArrayLength());
        var one = await JsonAsync("/api/v1/chain-types/16B-1");
        var tensile = one.GetProperty("values").EnumerateArray().Single(v => v.GetProperty("name").GetString() == "tensile_n");
        Assert.Equal((60_000, true), (tensile.GetProperty("value").GetDouble(), tensile.GetProperty("verified").GetBoolean()));
        Assert.Equal(HttpStatusCode.NotFound, (await host.CreateClient().GetAsync("/api/v1/chain-types/16Q", Ct)).StatusCode);
    }

    [Theory]
    [InlineData("/api/v1/gauge?type=16B-1&pitches=24", "length")]
    [InlineData("/api/v1/limit?teeth=3", "teeth")]
    [InlineData("/api/v1/drive?type=16B-1", "teeth")]
    [InlineData("/api/v1/chain-types?take=0", "take")]
    public async Task The_api_refuses_by_field(string path, string field)
    {
        var answer = await host.CreateClient().GetAsync(path, Ct);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var problem = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(Ct)).RootElement;
        Assert.True(problem.GetProperty("errors").TryGetProperty(field, out _));
    }

    private async Task<JsonElement> JsonAsync(string path) =>
        JsonDocument.Parse(await host.CreateClient().GetStringAsync(path, Ct)).RootElement;

    private static Task<HttpResponseMessage> ChooseAsync(HttpClient client, string back) =>
        client.PostAsync("/units", new FormUrlEncodedContent(
        new Dictionary<string, string>
        {
            ["length"] = "in",
            ["power"] = "hp",
            ["speed"] = "ms",
            ["temperature"] = "c",
            ["back"] = back,
        }), Ct);
}
