using System.Net;

namespace WearWatch.Dashboard.Tests.Api;

/// <summary>A program acknowledges, assigns and puts off a notice.</summary>
public sealed class ApiNoticeTests(ApiCaller api) : IClassFixture<ApiCaller>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_step_is_taken_once_and_stands_with_the_notice()
    {
        var id = await RaisedAsync();
        var told = await api.TellAsync($"/api/v1/notices/{id}/steps", """{"step":"acknowledged","by":"Ina"}""", "n-1");
        Assert.Equal(HttpStatusCode.Created, told.StatusCode);
        var again = await api.TellAsync($"/api/v1/notices/{id}/steps", """{"step":"acknowledged","by":"Ina"}""", "n-1");
        Assert.Equal(HttpStatusCode.OK, again.StatusCode);
        await api.TellAsync($"/api/v1/notices/{id}/steps", """{"step":"assigned","person":"Ben","by":"Ina"}""", "n-2");
        var notice = Assert.Single(
            (await api.GetAsync("/api/v1/notices?standing=acknowledged&assigned=Ben")).EnumerateArray());
        Assert.Equal(("acknowledged", "Ben"),
            (notice.GetProperty("standing").GetString(), notice.GetProperty("assigned_to").GetString()));
        Assert.Equal(["acknowledged:Ina", "assigned:Ina"], notice.GetProperty("steps").EnumerateArray()
            .Select(s => $"{s.GetProperty("step").GetString()}:{s.GetProperty("by").GetString()}"));
    }

    [Theory]
    [InlineData("""{"step":"snoozed","until":"2020-01-01"}""", HttpStatusCode.UnprocessableEntity)]
    [InlineData("""{"step":"hidden"}""", HttpStatusCode.UnprocessableEntity)]
    [InlineData("""{"step":"commented"}""", HttpStatusCode.UnprocessableEntity)]
    [InlineData("""{"step":"acknowledged","colour":"red"}""", HttpStatusCode.BadRequest)]
    public async Task What_cannot_be_taken_is_refused(string body, HttpStatusCode status) =>
        await ApiCaller.AssertProblemAsync(
            await api.TellAsync($"/api/v1/notices/{await RaisedAsync()}/steps", body, Guid.NewGuid().ToString()), status);

    [Fact]
    public async Task Of_no_notice_there_is_no_step() => await ApiCaller.AssertProblemAsync(
        await api.TellAsync("/api/v1/notices/9999/steps", """{"step":"acknowledged"}""", "n-9"), HttpStatusCode.NotFound);

    [Fact]
    public async Task A_standing_that_there_is_not_is_refused() => await ApiCaller.AssertProblemAsync(
        await api.Http.GetAsync("/api/v1/notices?standing=purple", Ct), HttpStatusCode.UnprocessableEntity);

    /// <summary>The number of an open notice; a worn chain raises one.</summary>
    private async Task<long> RaisedAsync()
    {
        if (await FirstAsync() is { } open) return open;
        for (var i = 1; i <= 8; i++)
        {
            var length = (1016 * (1 + 0.0045 * i)).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture);
            var reading = $$"""
                {"chain":"K-2","counter_h":{{3000 + 500 * i}},"tool":"tape","pitches":40,"length":"{{length}}","confirmed":true}
                """;
            await api.TellAsync("/api/v1/readings", reading, $"wear-{i}");
        }

        return (await FirstAsync())!.Value;
    }

    private async Task<long?> FirstAsync() => (await api.GetAsync("/api/v1/notices")).EnumerateArray()
        .Select(n => (long?)n.GetProperty("id").GetInt64()).FirstOrDefault();
}
