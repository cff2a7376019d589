using System.Net;
using System.Net.Http.Json;
using System.Text.Json;

namespace WearWatch.Dashboard.Tests.Api;

/// <summary>What the API takes in, once.</summary>
public sealed class ApiTellingTests : IAsyncLifetime
{
    private const string Reading = """{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":48,"length":"1231.4"}""";

    private readonly ApiCaller api = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => api.InitializeAsync();

    public ValueTask DisposeAsync() => api.DisposeAsync();

    [Fact]
    public async Task A_reading_by_caliper_carries_its_strand_and_load()
    {
        const string told = """
            {"chain":"K-1","counter_h":3200,"tool":"caliper","pitches":14,"inside":"345","outside":"370","strand":1,"load_n":556}
            """;
        await api.TellAsync("/api/v1/readings", told, "strand-1");
        var reading = (await api.GetAsync("/api/v1/chains/K-1/readings")).EnumerateArray().Last();
        Assert.Equal(357.5, reading.GetProperty("length_mm").GetDouble());
        Assert.Equal((1, 556, false),
            (reading.GetProperty("strand").GetInt32(), reading.GetProperty("load_n").GetDouble(),
                reading.GetProperty("taut").GetBoolean()));
    }

    [Fact]
    public async Task A_reading_is_created_once_replayed_the_second_time_and_refused_when_it_differs()
    {
        var first = await api.TellAsync("/api/v1/readings", Reading, "key-1");
        Assert.Equal(HttpStatusCode.Created, first.StatusCode);
        var again = await api.TellAsync("/api/v1/readings", Reading, "key-1");
        Assert.Equal(HttpStatusCode.OK, again.StatusCode);
        Assert.Equal(await ApiCaller.IdAsync(first), await ApiCaller.IdAsync(again));
        var other = await api.TellAsync(
            "/api/v1/readings", Reading.Replace("1231.4", "1231.9", StringComparison.Ordinal), "key-1");
        await ApiCaller.AssertProblemAsync(other, HttpStatusCode.Conflict);
        Assert.Equal(5, (await api.GetAsync("/api/v1/chains/K-1/readings")).GetArrayLength());
    }

    [Fact]
    public async Task A_reading_moves_the_forecast_before_it_is_answered()
    {
        var before = await api.GetAsync("/api/v1/chains/K-1/forecast");
        await api.TellAsync("/api/v1/readings", Reading, "key-1");
        var after = await api.GetAsync("/api/v1/chains/K-1/forecast");
        Assert.Equal(before.GetProperty("readings_used").GetInt32() + 1, after.GetProperty("readings_used").GetInt32());
    }

    [Fact]
    public async Task Inches_with_a_fraction_are_understood()
    {
        // 48 3/8 in = 1228.725 mm.
        var answer = await api.TellAsync("/api/v1/readings",
            """{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":48,"length":"48 3/8","unit":"in"}""", "in-1");
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        var readings = await api.GetAsync("/api/v1/chains/K-1/readings");
        Assert.Contains(readings.EnumerateArray(), r => Math.Abs(r.GetProperty("length_mm").GetDouble() - 1228.725) < 1e-9);
    }

    [Fact]
    public async Task A_length_that_cannot_be_waits_for_a_yes()
    {
        var answer =
            await api.TellAsync("/api/v1/readings", Reading.Replace("1231.4", "1431.4", StringComparison.Ordinal), "far");
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        var body = await answer.Content.ReadFromJsonAsync<JsonElement>(Ct);
        Assert.Equal("waiting", body.GetProperty("standing").GetString());
        Assert.NotEmpty(body.GetProperty("why").GetString()!);
        Assert.Equal(HttpStatusCode.OK, (await api.TellAsync(
            "/api/v1/readings", Reading.Replace("1231.4", "1431.4", StringComparison.Ordinal), "far")).StatusCode);
    }

    [Fact]
    public async Task An_event_is_created_once()
    {
        const string doubted = """{"chain":"K-1","event":"replacement","counter_h_before":3100,"counter_h_after":3100}""";
        // K-1 is hardly worn: a replacement of it is asked about, and taken with a yes.
        await ApiCaller.AssertProblemAsync(await api.TellAsync("/api/v1/events", doubted, "e-0"),
            HttpStatusCode.UnprocessableEntity);
        var body = doubted.Replace("}", ""","confirmed":true}""", StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Created, (await api.TellAsync("/api/v1/events", body, "e-1")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await api.TellAsync("/api/v1/events", body, "e-1")).StatusCode);
        await ApiCaller.AssertProblemAsync(await api.TellAsync("/api/v1/events", """{"chain":"K-1","event":"painting"}""", "e-2"),
            HttpStatusCode.UnprocessableEntity);
    }

    [Fact]
    public async Task Files_are_previewed_and_taken_in_and_the_second_time_changes_nothing()
    {
        const string csv = "chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c\n"
            + "K-2,2026-01-10T00:00:00Z,900,tape,,48,1222.1,mm,\nK-2,x,-1,tape,,0,,mm,\n";
        var preview = await api.ImportAsync(csv, "?preview=true");
        Assert.Equal((1, 1), (preview.GetProperty("taken").GetInt32(), preview.GetProperty("refused").GetInt32()));
        var first = await api.ImportAsync(csv);
        Assert.Equal((1, 0), (first.GetProperty("taken").GetInt32(), first.GetProperty("already_known").GetInt32()));
        var again = await api.ImportAsync(csv);
        Assert.Equal((0, 1), (again.GetProperty("taken").GetInt32(), again.GetProperty("already_known").GetInt32()));
        var remark = again.GetProperty("files")[0].GetProperty("remarks")[0];
        Assert.Equal(3, remark.GetProperty("line").GetInt32());
        Assert.NotEmpty((await api.GetAsync("/api/v1/imports")).EnumerateArray());
    }
}
