using System.Net;
using System.Text.Json;

namespace WearWatch.Dashboard.Tests.Api;

/// <summary>What the API answers of a small plant.</summary>
public sealed class ApiAskingTests(ApiCaller api) : IClassFixture<ApiCaller>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Chains_come_in_stretches_with_their_total()
    {
        var page = await api.GetAsync("/api/v1/chains?take=1");
        Assert.Equal(2, page.GetProperty("total").GetInt32());
        Assert.Single(page.GetProperty("chains").EnumerateArray());
    }

    [Fact]
    public async Task A_chain_carries_units_in_its_names()
    {
        var chain = await api.GetAsync("/api/v1/chains/K-1");
        Assert.Equal(25.4, chain.GetProperty("pitch_mm").GetDouble());
        Assert.Equal(1.5, chain.GetProperty("speed_m_s").GetDouble());
        Assert.Equal("auto", chain.GetProperty("lubrication").GetString());
    }

    [Fact]
    public async Task A_forecast_has_ninety_nine_percentiles_that_rise()
    {
        var forecast = await api.GetAsync("/api/v1/chains/K-1/forecast");
        var percentiles = forecast.GetProperty("remaining_h_percentiles").EnumerateArray()
            .Select(p => p.ValueKind == JsonValueKind.Null ? double.MaxValue : p.GetDouble()).ToList();
        Assert.Equal(99, percentiles.Count);
        Assert.Equal(percentiles.Order(), percentiles);
        Assert.Equal(percentiles[4], forecast.GetProperty("remaining_h_p05").GetDouble());
        Assert.InRange(forecast.GetProperty("rate_pct_per_1000h").GetDouble(), 0.05, 1);
    }

    [Fact]
    public async Task Readings_and_events_stand_in_their_order()
    {
        var readings = (await api.GetAsync("/api/v1/chains/K-1/readings")).EnumerateArray()
            .Select(r => r.GetProperty("counter_h").GetDouble()).ToList();
        Assert.Equal([500, 1200, 2000, 2800], readings);
        Assert.Equal("oiling", Assert.Single((await api.GetAsync("/api/v1/chains/K-1/events")).EnumerateArray())
            .GetProperty("event").GetString());
    }

    [Theory]
    [InlineData("/api/v1/chains/nobody")]
    [InlineData("/api/v1/chains/nobody/readings")]
    [InlineData("/api/v1/chains/nobody/events")]
    [InlineData("/api/v1/chains/nobody/forecast")]
    [InlineData("/api/v1/nothing")]
    public async Task What_is_not_there_is_a_problem_of_404(string path) =>
        await ApiCaller.AssertProblemAsync(await api.Http.GetAsync(path, Ct), HttpStatusCode.NotFound);

    [Theory]
    [InlineData("/api/v1/chains?take=0")]
    [InlineData("/api/v1/chains?condition=purple")]
    [InlineData("/api/v1/notices?kind=purple")]
    public async Task A_question_that_makes_no_sense_is_refused(string path) =>
        await ApiCaller.AssertProblemAsync(await api.Http.GetAsync(path, Ct), HttpStatusCode.UnprocessableEntity);

    [Fact]
    public async Task The_plant_counts_its_chains()
    {
        var plant = await api.GetAsync("/api/v1/plant");
        Assert.Equal(2, plant.GetProperty("chains").GetInt32());
        Assert.Equal(2, plant.GetProperty("chains_by_condition").EnumerateObject().Sum(c => c.Value.GetInt32()));
        Assert.Equal(JsonValueKind.Array, (await api.GetAsync("/api/v1/notices")).ValueKind);
    }

    [Fact]
    public async Task The_description_names_every_route()
    {
        var paths = (await api.GetAsync("/openapi/v1.json")).GetProperty("paths");
        foreach (var path in new[]
        {
            "/api/v1/plant", "/api/v1/chains", "/api/v1/chains/{chain}", "/api/v1/chains/{chain}/forecast",
            "/api/v1/chains/{chain}/readings",
            "/api/v1/chains/{chain}/events", "/api/v1/readings", "/api/v1/events", "/api/v1/notices",
            "/api/v1/notices/{id}/judgement", "/api/v1/notices/{id}/steps",
            "/api/v1/imports", "/api/v1/plan", "/api/v1/plan/proposals",
        }) Assert.True(paths.TryGetProperty(path, out _), path);
    }
}
