using System.Net;

namespace WearWatch.Dashboard.Tests.Api;

/// <summary>What the API refuses, with which words. Nothing of it is stored, so one plant serves all.</summary>
public sealed class ApiRefusingTests(ApiCaller api) : IClassFixture<ApiCaller>, IAsyncLifetime
{
    private const string Reading = """{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":48,"length":"1231.4"}""";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => default;

    public async ValueTask DisposeAsync()
    {
        Assert.Equal(4, (await api.GetAsync("/api/v1/chains/K-1/readings")).GetArrayLength());
        Assert.Equal(1, (await api.GetAsync("/api/v1/chains/K-1/events")).GetArrayLength());
    }

    [Theory]
    [InlineData("\"inside\":\"345\"", "outside")]
    [InlineData("\"length\":\"357.5\",\"taut\":true,\"load_n\":556", "load_n")]
    [InlineData("\"length\":\"357.5\",\"strand\":0", "strand")]
    public async Task What_is_wrong_with_a_reading_is_told_by_its_field(string fields, string wrong)
    {
        var answer = await api.TellAsync(
            "/api/v1/readings", $$"""{"chain":"K-1","counter_h":3200,"tool":"caliper","pitches":14,{{fields}}}""",
            "wrong-" + wrong);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains($"\"{wrong}\"", await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
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
        var answer = await api.TellAsync("/api/v1/readings", body, Guid.NewGuid().ToString());
        var problem = await ApiCaller.AssertProblemAsync(answer, HttpStatusCode.UnprocessableEntity);
        Assert.True(problem.GetProperty("errors").TryGetProperty(field, out _), problem.ToString());
    }

    [Theory]
    [InlineData("""{"chain":"K-1",""")]
    [InlineData("""{"chain":"K-1","pitches":"many"}""")]
    [InlineData("""{"chain":"K-1","counterh":5}""")]
    [InlineData("null")]
    public async Task A_body_that_cannot_be_read_is_a_bad_request(string body) =>
        await ApiCaller.AssertProblemAsync(await api.TellAsync("/api/v1/readings", body, "k"), HttpStatusCode.BadRequest);

    [Theory]
    [InlineData("/api/v1/readings")]
    [InlineData("/api/v1/events")]
    public async Task A_write_without_key_is_a_bad_request(string path) =>
        await ApiCaller.AssertProblemAsync(await api.TellAsync(path, Reading, null), HttpStatusCode.BadRequest);
}
