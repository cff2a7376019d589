using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Tests.Api;

/// <summary>Each fact of the lists that is told to the API is kept and told by it again.</summary>
public sealed class ApiFactsTests : IAsyncLifetime
{
    /// <summary>Together they tell every fact of an event.</summary>
    private static readonly string[] events =
    [
        """
        {"event":"replacement","taken_at":"2026-03-01T08:00:00+00:00","counter_h_before":2095,"counter_h_after":2096.5,
         "lot":"B-2","broke":true,"new_pitches":118,"take_up_mm":3.5,"note":"seen"}
        """,
        """
        {"event":"oiling","taken_at":"2026-03-02T08:00:00+00:00","oil_method":"hand","oil_grade":"ISO VG 100","oil_amount_ml":40}
        """,
        """{"event":"shortened","taken_at":"2026-03-03T08:00:00+00:00","pitches_out":2}""",
        """{"event":"sprocket_replaced","taken_at":"2026-03-04T08:00:00+00:00","new_teeth":21}""",
    ];

    /// <summary>Together they tell every fact of a reading.</summary>
    private static readonly string[] readings =
    [
        """
        {"taken_at":"2026-03-01T08:00:00+00:00","counter_h":3200,"tool":"tape","place":"2","pitches":48,"length":"48 3/8",
         "unit":"in","temperature_c":24.5,"strand":1,"taut":true,"take_up_mm":12}
        """,
        """{"counter_h":3210,"tool":"caliper","pitches":48,"length":"1229","load_n":556.5}""",
    ];

    private readonly ApiCaller api = new();

    public ValueTask InitializeAsync() => api.InitializeAsync();

    public ValueTask DisposeAsync() => api.DisposeAsync();

    [Fact]
    public Task Every_fact_of_an_event_comes_back_as_it_was_told() =>
        AllComeBackAsync("events", events, EventColumns.All.Select(c => c.Name));

    [Fact]
    public Task Every_fact_of_a_reading_comes_back_as_it_was_told() =>
        AllComeBackAsync("readings", readings, ReadingColumns.All.Select(c => c.Name));

    [Theory]
    [InlineData("events", """{"event":"oiling","taken_at":"2026-03-02T08:00:00Z","oil_amount_ml":-1}""", "oil_amount_ml")]
    [InlineData("events", """{"event":"replacement","taken_at":"2026-03-02T08:00:00Z","new_pitches":0}""", "new_pitches")]
    [InlineData("events", """{"event":"sprocket_replaced","taken_at":"2026-03-02T08:00:00Z","new_teeth":4}""", "new_teeth")]
    [InlineData("events", """{"event":"party","taken_at":"2026-03-02T08:00:00Z"}""", "event")]
    [InlineData("events", """{"taken_at":"2026-03-02T08:00:00Z"}""", "event")]
    [InlineData("readings", """{"counter_h":1,"tool":"ruler","pitches":48,"length":"1229"}""", "tool")]
    [InlineData("readings", """{"counter_h":1,"tool":"tape","length":"1229"}""", "pitches")]
    [InlineData("readings", """{"counter_h":1,"tool":"tape","pitches":48,"length":"1229","taut":true,"load_n":5}""", "load_n")]
    public async Task What_a_fact_cannot_be_is_told_at_its_field(string what, string told, string field)
    {
        var answer = await api.TellAsync("/api/v1/" + what, Of("K-1", told).ToJsonString(), "wrong");
        var problem = await ApiCaller.AssertProblemAsync(answer, HttpStatusCode.UnprocessableEntity);
        Assert.Equal(field, Assert.Single(problem.GetProperty("errors").EnumerateObject()).Name);
    }

    private async Task AllComeBackAsync(string what, string[] bodies, IEnumerable<string> facts)
    {
        var told = bodies.Select(body => Of("K-1", body)).ToList();
        Assert.Equal(facts.Append("chain").Order(), told.SelectMany(t => t.Select(f => f.Key)).Distinct().Order());
        foreach (var (at, body) in told.Index())
        {
            if (what == "readings") body["confirmed"] = true;
            var answer = await api.TellAsync("/api/v1/" + what, body.ToJsonString(), $"fact-{at}");
            Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
            body.Remove("confirmed");
            var id = await ApiCaller.IdAsync(answer);
            var kept = (await api.GetAsync($"/api/v1/chains/K-1/{what}")).EnumerateArray()
                .Single(k => k.GetProperty("id").GetInt64() == id);
            Assert.All(body, fact => Assert.True(
                JsonElement.DeepEquals(JsonSerializer.SerializeToElement(fact.Value), kept.GetProperty(fact.Key)), fact.Key));
        }
    }

    private static JsonObject Of(string chain, string told)
    {
        var body = JsonNode.Parse(told)!.AsObject();
        body["chain"] = chain;
        return body;
    }
}
