using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using WearWatch.Dashboard.Tests.Api;
using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;
using WearWatch.Worker.Commands;

namespace WearWatch.Dashboard.Tests.Planning;

/// <summary>The swap plan over HTTP, and that page, command line and API propose the same.</summary>
public sealed class PlanApiTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_page_the_command_line_and_the_API_propose_the_same_and_what_one_keeps_the_others_show()
    {
        await using var mill = await PlannedHost.OpenAsync();
        using var http = mill.Host.CreateClient();
        var board = new PlanDraft(await mill.Get<PlanQuery>().AskAsync(Ct));
        await board.ProposeAsync(stop: Ct);
        var onThePage = board.Plan.Placements.Select(p => (p.Chain, p.Window?.Id)).ToArray();
        Assert.All(onThePage, p => Assert.NotNull(p.Id));

        var proposed = await SendAsync(http, HttpMethod.Post, "/api/v1/plan/proposals", "{}", key: null);
        var proposal = await proposed.Content.ReadAsStringAsync(Ct);
        Assert.Equal(onThePage, Swaps(proposal));
        Assert.Equal(onThePage, Swaps(await CommandAsync(mill, "propose")));

        var kept = await SendAsync(http, HttpMethod.Put, "/api/v1/plan", proposal, "keep-1");
        Assert.Equal(HttpStatusCode.OK, kept.StatusCode);
        Assert.Equal(onThePage, Swaps(await http.GetStringAsync("/api/v1/plan", Ct)));
        Assert.Equal(onThePage, Swaps(await CommandAsync(mill, "show")));
        Assert.Equal(onThePage, (await mill.Get<KeptPlan>().AskAsync(Ct)).Plan.Placements.Select(p => (p.Chain, p.Window?.Id)));
    }

    [Fact]
    public async Task A_plan_is_kept_once_and_one_that_others_have_overtaken_is_refused()
    {
        await using var mill = await PlannedHost.OpenAsync();
        using var http = mill.Host.CreateClient();
        const string lockIt = """{"revision":0,"swaps":[{"chain":"D-1","placing":"locked","note":"for the audit"}],"by":"Ann"}""";
        Assert.Equal(HttpStatusCode.OK, (await SendAsync(http, HttpMethod.Put, "/api/v1/plan", lockIt, "k1")).StatusCode);
        var again = await SendAsync(http, HttpMethod.Put, "/api/v1/plan", lockIt, "k1");
        Assert.Equal(1, (await again.Content.ReadFromJsonAsync<JsonElement>(Ct)).GetProperty("revision").GetInt32());
        var late = await SendAsync(http, HttpMethod.Put, "/api/v1/plan", """{"revision":0,"swaps":[{"chain":"D-1"}]}""", "k2");
        await ApiCaller.AssertProblemAsync(late, HttpStatusCode.Conflict);
        await using var db = await mill.Host.OpenAsync();
        var only = Assert.Single(db.Swaps);
        Assert.Equal(("Ann", SwapPlacing.Locked, "for the audit"), (only.DecidedBy, only.Placing, only.Note));
    }

    [Theory]
    [InlineData("PUT", "/api/v1/plan", """{"revision":0,"swaps":[{"chain":"D-1"},{"chain":"X"}]}""", "k", 422, "swaps[1].chain")]
    [InlineData("PUT", "/api/v1/plan", """{"revision":0,"swaps":[]}""", null, 400, "Idempotency-Key")]
    [InlineData("PUT", "/api/v1/plan", """{"revision":"none"}""", "k", 400, "revision")]
    [InlineData("PUT", "/api/v1/plan", """{"revision":0,"what_if":{"weeks":8}}""", "k", 422, "what_if")]
    [InlineData("POST", "/api/v1/plan/proposals", """{"weeks":105}""", null, 422, "weeks")]
    [InlineData("POST", "/api/v1/plan/proposals", """{"shutdown":"Christmas"}""", null, 422, "shutdown")]
    [InlineData("POST", "/api/v1/plan/proposals", "[", null, 400, "JSON")]
    public async Task What_cannot_be_taken_is_answered_as_a_problem_that_names_it(
        string method, string path, string body, string? key, int status, string named)
    {
        await using var mill = await PlannedHost.OpenAsync();
        using var http = mill.Host.CreateClient();
        var answer = await SendAsync(http, new HttpMethod(method), path, body, key);
        var problem = await ApiCaller.AssertProblemAsync(answer, (HttpStatusCode)status);
        Assert.Contains(named, problem.GetRawText(), StringComparison.Ordinal);
        await using var db = await mill.Host.OpenAsync();
        Assert.Empty(db.Swaps);
    }

    private static async Task<HttpResponseMessage> SendAsync(
        HttpClient http, HttpMethod method, string path, string body, string? key)
    {
        using var request = new HttpRequestMessage(method, path);
        request.Content = new StringContent(body, Encoding.UTF8, "application/json");
        if (key is not null) request.Headers.Add("Idempotency-Key", key);
        return await http.SendAsync(request, Ct);
    }

    private static async Task<string> CommandAsync(PlannedHost mill, string what)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        Assert.Equal(
            ExitCode.Done, await CommandLine.RunAsync(["plan", what, "--json", "--data", mill.Host.DataFolder], output, error));
        return output.ToString();
    }

    private static IEnumerable<(string Chain, string? Shutdown)> Swaps(string json) =>
        JsonSerializer.Deserialize(json, PlanningJson.Default.PlanJson)!.Swaps.Select(s => (s.Chain, s.Shutdown));
}
