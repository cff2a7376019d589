using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using WearWatch.Dashboard.Planner;
using WearWatch.Dashboard.Tests.Api;
using WearWatch.Plant.Planning;
using WearWatch.Worker.Commands;

namespace WearWatch.Dashboard.Tests.Planning;

/// <summary>A work package goes out by page, command line and API with the same ids, and reports come back under them.</summary>
public sealed class WorkOrderApiTests
{
    private const string Address = "/api/v1/work-orders";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_package_has_the_same_ids_by_API_command_line_JSON_and_CSV_and_in_the_plan()
    {
        await using var mill = await PlannedHost.OpenAsync();
        await mill.KeepAProposalAsync();
        using var http = mill.Host.CreateClient();
        var packages = await http.GetFromJsonAsync<JsonElement>("/api/v1/plan/packages", Ct);
        var ids = packages.EnumerateArray().SelectMany(IdsOf).Order().ToList();
        Assert.Equal(4, ids.Count);
        Assert.Equal(ids, (await http.GetFromJsonAsync<JsonElement>("/api/v1/plan", Ct)).GetProperty("swaps").EnumerateArray()
            .Select(s => s.GetProperty("id").GetString()!).Order());
        Assert.Contains(ids[0], await http.GetStringAsync("/plan/swaps.csv", Ct), StringComparison.Ordinal);
        using var output = new StringWriter();
        await CommandLine.RunAsync(["plan", "packages", "--data", mill.Host.DataFolder], output, TextWriter.Null);
        Assert.Equal(ids, JsonSerializer.Deserialize<JsonElement>(output.ToString()).EnumerateArray().SelectMany(IdsOf).Order());

        foreach (var package in packages.EnumerateArray())
        {
            var id = package.GetProperty("shutdown").GetString()!;
            var file = await http.GetFromJsonAsync<JsonElement>(PackageWords.Address(id, ".json"), Ct);
            Assert.True(JsonElement.DeepEquals(package, file), id);
            var rows = (await http.GetStringAsync(PackageWords.Address(id, ".csv"), Ct)).TrimEnd().Split("\r\n");
            Assert.StartsWith("swap,chain,line,", rows[0], StringComparison.Ordinal);
            Assert.Equal(IdsOf(package), rows.Skip(1).Select(r => r.Split(',')[0]));
        }

        Assert.Equal(HttpStatusCode.NotFound, (await http.GetAsync("/plan/stop.csv?id=none", Ct)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await http.GetAsync("/plan/stop.json?id=none", Ct)).StatusCode);
    }

    [Fact]
    public async Task A_report_is_taken_once_a_contradiction_waits_with_why_and_is_settled_once()
    {
        await using var mill = await PlannedHost.OpenAsync();
        await mill.KeepAProposalAsync();
        using var http = mill.Host.CreateClient();
        var swap = (await mill.Get<KeptPlan>().AskAsync(Ct)).Packages()[0].Swaps[0].Id;
        var released = $$"""{"swap":"{{swap}}","order_number":"4711","order_state":"released"}""";
        Assert.Equal(HttpStatusCode.Created, (await SendAsync(http, HttpMethod.Post, Address, released, "a")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await SendAsync(http, HttpMethod.Post, Address, released, "a")).StatusCode);
        var open = $$"""{"swap":"{{swap}}","order_state":"open","note":"by mistake"}""";
        var waiting = await SendAsync(http, HttpMethod.Post, Address, open, "b");
        var told = await waiting.Content.ReadFromJsonAsync<JsonElement>(Ct);
        Assert.Equal("waiting", told.GetProperty("standing").GetString());
        Assert.Contains("goes back from released to open", told.GetProperty("why").GetString(), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await SendAsync(http, HttpMethod.Post, Address, open, "b")).StatusCode);

        var listed = Assert.Single(
            (await http.GetFromJsonAsync<JsonElement>($"{Address}?standing=in_conflict", Ct)).EnumerateArray());
        Assert.Equal(("by mistake", swap), (listed.GetProperty("note").GetString(), listed.GetProperty("swap").GetString()));
        var settlement = $"{Address}/{listed.GetProperty("id").GetInt64()}/settlement";
        Assert.Equal(HttpStatusCode.NoContent,
            (await SendAsync(http, HttpMethod.Put, settlement, """{"take":"theirs"}""", "c")).StatusCode);
        Assert.Equal(HttpStatusCode.NoContent,
            (await SendAsync(http, HttpMethod.Put, settlement, """{"take":"theirs"}""", "c")).StatusCode);
        await ApiCaller.AssertProblemAsync(
            await SendAsync(http, HttpMethod.Put, settlement, """{"take":"ours"}""", "d"), HttpStatusCode.UnprocessableEntity);
        var chain = listed.GetProperty("chain").GetString();
        Assert.Equal(["theirs_taken", "used"], (await http.GetFromJsonAsync<JsonElement>($"{Address}?chain={chain}", Ct))
            .EnumerateArray().Select(r => r.GetProperty("standing").GetString()!));
    }

    [Theory]
    [InlineData("POST", "", """{"swap":"swap-1","order_state":"finished"}""", "k", 422, "order_state")]
    [InlineData("POST", "", """{"swap":"","order_state":"open"}""", "k", 422, "swap")]
    [InlineData("POST", "", """{"swap":"swap-1","order_state":"done"}""", "k", 422, "done_at")]
    [InlineData("POST", "", """{"swap":"swap-1","order_state":"open","material":[{"part":"x"}]}""", "k", 422, "material")]
    [InlineData("POST", "", """{"swap":"swap-1","order_state":"open","price":3}""", "k", 400, "price")]
    [InlineData("POST", "", """{"swap":"swap-1","order_state":"open"}""", null, 400, "Idempotency-Key")]
    [InlineData("PUT", "/1/settlement", """{"take":"both"}""", "k", 422, "take")]
    [InlineData("PUT", "/1/settlement", """{"take":"ours"}""", "k", 422, "no such report")]
    [InlineData("GET", "?standing=lost", "", null, 422, "standing")]
    public async Task What_cannot_be_taken_is_answered_as_a_problem_that_names_it(
        string method, string path, string body, string? key, int status, string named)
    {
        await using var mill = await PlannedHost.OpenAsync();
        using var http = mill.Host.CreateClient();
        var problem = await ApiCaller.AssertProblemAsync(
            await SendAsync(http, new HttpMethod(method), Address + path, body, key), (HttpStatusCode)status);
        Assert.Contains(named, problem.GetRawText(), StringComparison.Ordinal);
        await using var db = await mill.Host.OpenAsync();
        Assert.Empty(db.WorkOrderReports);
    }

    private static IEnumerable<string> IdsOf(JsonElement package) =>
        package.GetProperty("swaps").EnumerateArray().Select(s => s.GetProperty("id").GetString()!);

    private static async Task<HttpResponseMessage> SendAsync(
        HttpClient http, HttpMethod method, string path, string body, string? key)
    {
        using var request = new HttpRequestMessage(method, path);
        if (method != HttpMethod.Get) request.Content = new StringContent(body, Encoding.UTF8, "application/json");
        if (key is not null) request.Headers.Add("Idempotency-Key", key);
        return await http.SendAsync(request, Ct);
    }
}
