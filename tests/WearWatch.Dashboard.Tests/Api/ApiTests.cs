using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using WearWatch.Worker.Intake;

namespace WearWatch.Dashboard.Tests.Api;

public sealed class ApiTests : IAsyncLifetime
{
    private const string Reading = """{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":48,"length":"1231.4"}""";

    private readonly DashboardHost host = new();
    private HttpClient client = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        client = host.CreateClient();
        var import = host.Get<FileImport>();
        var report = await import.ImportAsync(SmallPlant.Files, null, Ct);
        Assert.Equal("", string.Join("; ", report.Files.SelectMany(f => f.Remarks)));
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task Chains_come_in_stretches_with_their_total()
    {
        var page = await GetAsync("/api/v1/chains?take=1");
        Assert.Equal(2, page.GetProperty("total").GetInt32());
        Assert.Single(page.GetProperty("chains").EnumerateArray());
    }

    [Fact]
    public async Task A_chain_carries_units_in_its_names()
    {
        var chain = await GetAsync("/api/v1/chains/K-1");
        Assert.Equal(25.4, chain.GetProperty("pitch_mm").GetDouble());
        Assert.Equal(1.5, chain.GetProperty("speed_m_s").GetDouble());
        Assert.Equal("auto", chain.GetProperty("lubrication").GetString());
    }

    [Fact]
    public async Task A_reading_by_caliper_carries_its_strand_and_load()
    {
        const string told = """
            {"chain":"K-1","counter_h":3200,"tool":"caliper","pitches":14,"inside":"345","outside":"370","strand":1,"load_n":556}
            """;
        await TellAsync("/api/v1/readings", told, "strand-1");
        var reading = (await GetAsync("/api/v1/chains/K-1/readings")).EnumerateArray().Last();
        Assert.Equal(357.5, reading.GetProperty("length_mm").GetDouble());
        Assert.Equal((1, 556, false),
            (reading.GetProperty("strand").GetInt32(), reading.GetProperty("load_n").GetDouble(), reading.GetProperty("taut").GetBoolean()));
    }

    [Theory]
    [InlineData("\"inside\":\"345\"", "outside")]
    [InlineData("\"length\":\"357.5\",\"taut\":true,\"load_n\":556", "load_n")]
    [InlineData("\"length\":\"357.5\",\"strand\":0", "strand")]
    public async Task What_is_wrong_with_a_reading_is_told_by_its_field(string fields, string wrong)
    {
        var answer = await TellAsync(
            "/api/v1/readings", $$"""{"chain":"K-1","counter_h":3200,"tool":"caliper","pitches":14,{{fields}}}""", "wrong-" + wrong);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains($"\"{wrong}\"", await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_forecast_has_ninety_nine_percentiles_that_rise()
    {
        var forecast = await GetAsync("/api/v1/chains/K-1/forecast");
        var percentiles = forecast.GetProperty("remaining_h_percentiles").EnumerateArray().Select(p => p.ValueKind == JsonValueKind.Null ? double.MaxValue : p.GetDouble()).ToList();
        Assert.Equal(99, percentiles.Count);
        Assert.Equal(percentiles.Order(), percentiles);
        Assert.Equal(percentiles[4], forecast.GetProperty("remaining_h_p05").GetDouble());
        Assert.InRange(forecast.GetProperty("rate_pct_per_1000h").GetDouble(), 0.05, 1);
    }

    [Fact]
    public async Task Readings_and_events_stand_in_their_order()
    {
        var readings = (await GetAsync("/api/v1/chains/K-1/readings")).EnumerateArray().Select(r => r.GetProperty("counter_h").GetDouble()).ToList();
        Assert.Equal([500, 1200, 2000, 2800], readings);
        Assert.Equal("oiling", Assert.Single((await GetAsync("/api/v1/chains/K-1/events")).EnumerateArray()).GetProperty("event").GetString());
    }

    [Fact]
    public async Task A_reading_is_created_once_replayed_the_second_time_and_refused_when_it_differs()
    {
        var first = await TellAsync("/api/v1/readings", Reading, "key-1");
        Assert.Equal(HttpStatusCode.Created, first.StatusCode);
        var again = await TellAsync("/api/v1/readings", Reading, "key-1");
        Assert.Equal(HttpStatusCode.OK, again.StatusCode);
        Assert.Equal(await IdAsync(first), await IdAsync(again));
        var other = await TellAsync("/api/v1/readings", Reading.Replace("1231.4", "1231.9", StringComparison.Ordinal), "key-1");
        await AssertProblemAsync(other, HttpStatusCode.Conflict);
        Assert.Equal(5, (await GetAsync("/api/v1/chains/K-1/readings")).GetArrayLength());
    }

    [Fact]
    public async Task A_reading_moves_the_forecast_before_it_is_answered()
    {
        var before = await GetAsync("/api/v1/chains/K-1/forecast");
        await TellAsync("/api/v1/readings", Reading, "key-1");
        var after = await GetAsync("/api/v1/chains/K-1/forecast");
        Assert.Equal(before.GetProperty("readings_used").GetInt32() + 1, after.GetProperty("readings_used").GetInt32());
    }

    [Fact]
    public async Task Inches_with_a_fraction_are_understood()
    {
        // 48 3/8 in = 1228.725 mm.
        var answer = await TellAsync("/api/v1/readings", """{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":48,"length":"48 3/8","unit":"in"}""", "in-1");
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        var readings = await GetAsync("/api/v1/chains/K-1/readings");
        Assert.Contains(readings.EnumerateArray(), r => Math.Abs(r.GetProperty("length_mm").GetDouble() - 1228.725) < 1e-9);
    }

    [Fact]
    public async Task A_length_that_cannot_be_waits_for_a_yes()
    {
        var answer = await TellAsync("/api/v1/readings", Reading.Replace("1231.4", "1431.4", StringComparison.Ordinal), "far");
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        var body = await answer.Content.ReadFromJsonAsync<JsonElement>(Ct);
        Assert.Equal("waiting", body.GetProperty("standing").GetString());
        Assert.NotEmpty(body.GetProperty("why").GetString()!);
        Assert.Equal(HttpStatusCode.OK, (await TellAsync("/api/v1/readings", Reading.Replace("1231.4", "1431.4", StringComparison.Ordinal), "far")).StatusCode);
    }

    [Theory]
    [InlineData("""{"chain":"K-1","counter_h":3200,"tool":"ruler","pitches":48,"length":"1231"}""", "tool")]
    [InlineData("""{"chain":"K-1","counter_h":3200,"tool":"tape","length":"1231"}""", "pitches")]
    [InlineData("""{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":0,"length":"1231"}""", "pitches")]
    [InlineData("""{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":48,"length":"abc"}""", "length")]
    [InlineData("""{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":48}""", "length")]
    [InlineData("""{"chain":"K-1","tool":"tape","pitches":48,"length":"1231"}""", "counter_h")]
    [InlineData("""{"chain":"nobody","counter_h":3200,"tool":"tape","pitches":48,"length":"1231"}""", "chain")]
    public async Task What_cannot_be_taken_is_refused_by_field(string body, string field)
    {
        var answer = await TellAsync("/api/v1/readings", body, Guid.NewGuid().ToString());
        var problem = await AssertProblemAsync(answer, HttpStatusCode.UnprocessableEntity);
        Assert.True(problem.GetProperty("errors").TryGetProperty(field, out _), problem.ToString());
    }

    [Theory]
    [InlineData("""{"chain":"K-1",""")]
    [InlineData("""{"chain":"K-1","pitches":"many"}""")]
    [InlineData("""{"chain":"K-1","counterh":5}""")]
    [InlineData("null")]
    public async Task A_body_that_cannot_be_read_is_a_bad_request(string body) =>
        await AssertProblemAsync(await TellAsync("/api/v1/readings", body, "k"), HttpStatusCode.BadRequest);

    [Theory]
    [InlineData("/api/v1/readings")]
    [InlineData("/api/v1/events")]
    public async Task A_write_without_key_is_a_bad_request(string path) =>
        await AssertProblemAsync(await TellAsync(path, Reading, null), HttpStatusCode.BadRequest);

    [Fact]
    public async Task An_event_is_created_once()
    {
        const string body = """{"chain":"K-1","event":"replacement","counter_h_before":3100,"counter_h_after":3100}""";
        Assert.Equal(HttpStatusCode.Created, (await TellAsync("/api/v1/events", body, "e-1")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await TellAsync("/api/v1/events", body, "e-1")).StatusCode);
        await AssertProblemAsync(await TellAsync("/api/v1/events", """{"chain":"K-1","event":"painting"}""", "e-2"), HttpStatusCode.UnprocessableEntity);
    }

    [Theory]
    [InlineData("/api/v1/chains/nobody")]
    [InlineData("/api/v1/chains/nobody/readings")]
    [InlineData("/api/v1/chains/nobody/events")]
    [InlineData("/api/v1/chains/nobody/forecast")]
    [InlineData("/api/v1/nothing")]
    public async Task What_is_not_there_is_a_problem_of_404(string path) =>
        await AssertProblemAsync(await client.GetAsync(path, Ct), HttpStatusCode.NotFound);

    [Theory]
    [InlineData("/api/v1/chains?take=0")]
    [InlineData("/api/v1/chains?condition=purple")]
    [InlineData("/api/v1/notices?kind=purple")]
    public async Task A_question_that_makes_no_sense_is_refused(string path) =>
        await AssertProblemAsync(await client.GetAsync(path, Ct), HttpStatusCode.UnprocessableEntity);

    [Fact]
    public async Task The_plant_counts_its_chains()
    {
        var plant = await GetAsync("/api/v1/plant");
        Assert.Equal(2, plant.GetProperty("chains").GetInt32());
        Assert.Equal(2, plant.GetProperty("chains_by_condition").EnumerateObject().Sum(c => c.Value.GetInt32()));
        Assert.Equal(JsonValueKind.Array, (await GetAsync("/api/v1/notices")).ValueKind);
    }

    [Fact]
    public async Task Files_are_previewed_and_taken_in_and_the_second_time_changes_nothing()
    {
        const string csv = "chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c\nK-2,2026-01-05T00:00:00Z,900,tape,,48,1222.1,mm,\nK-2,x,-1,tape,,0,,mm,\n";
        var preview = await ImportAsync(csv, "?preview=true");
        Assert.Equal((1, 1), (preview.GetProperty("taken").GetInt32(), preview.GetProperty("refused").GetInt32()));
        var first = await ImportAsync(csv);
        Assert.Equal((1, 0), (first.GetProperty("taken").GetInt32(), first.GetProperty("already_known").GetInt32()));
        var again = await ImportAsync(csv);
        Assert.Equal((0, 1), (again.GetProperty("taken").GetInt32(), again.GetProperty("already_known").GetInt32()));
        var remark = again.GetProperty("files")[0].GetProperty("remarks")[0];
        Assert.Equal(3, remark.GetProperty("line").GetInt32());
        Assert.NotEmpty((await GetAsync("/api/v1/imports")).EnumerateArray());
    }

    [Fact]
    public async Task The_description_names_every_route()
    {
        var paths = (await GetAsync("/openapi/v1.json")).GetProperty("paths");
        foreach (var path in new[]
        {
            "/api/v1/plant", "/api/v1/chains", "/api/v1/chains/{chain}", "/api/v1/chains/{chain}/forecast", "/api/v1/chains/{chain}/readings",
            "/api/v1/chains/{chain}/events", "/api/v1/readings", "/api/v1/events", "/api/v1/notices", "/api/v1/notices/{id}/judgement", "/api/v1/imports",
        }) Assert.True(paths.TryGetProperty(path, out _), path);
    }

    private async Task<JsonElement> GetAsync(string path) => await client.GetFromJsonAsync<JsonElement>(path, Ct);

    private async Task<HttpResponseMessage> TellAsync(string path, string body, string? key)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = new StringContent(body, Encoding.UTF8, "application/json") };
        if (key is not null) request.Headers.Add("Idempotency-Key", key);
        return await client.SendAsync(request, Ct);
    }

    private async Task<JsonElement> ImportAsync(string csv, string query = "")
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/imports" + query)
        {
            Content = new MultipartFormDataContent { { new StringContent(csv), "files", "readings.csv" } },
        };
        request.Headers.Add("Idempotency-Key", "import");
        var answer = await client.SendAsync(request, Ct);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadFromJsonAsync<JsonElement>(Ct);
    }

    private static async Task<long> IdAsync(HttpResponseMessage answer) =>
        (await answer.Content.ReadFromJsonAsync<JsonElement>(Ct)).GetProperty("id").GetInt64();

    private static async Task<JsonElement> AssertProblemAsync(HttpResponseMessage answer, HttpStatusCode status)
    {
        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        return await answer.Content.ReadFromJsonAsync<JsonElement>(Ct);
    }
}
