using System.Net;
using System.Text;
using System.Text.Json;
using WearWatch.Dashboard.Tests.Api;
using WearWatch.Plant.Planning;
using WearWatch.Worker.Commands;

namespace WearWatch.Dashboard.Tests.Planning;

/// <summary>A chain that holds a load over HTTP and on the command line: said first, and never taken past its date.</summary>
public sealed class HeldLoadApiTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_is_out_of_use_stands_first_in_the_answer_and_before_every_swap_of_the_text()
    {
        await using var mill = await PlannedHost.OpenAsync();
        await LiftAsync(mill);
        using var http = mill.Host.CreateClient();
        var plan = await ShownAsync(http);
        Assert.Equal(("out_of_use", "P-2"), (plan.Remarks[0].Kind, plan.Remarks[0].Subject));
        Assert.NotNull(plan.Swaps.Single(s => s.Chain == "P-2").OutOfUseFrom);

        using var output = new StringWriter();
        using var error = new StringWriter();
        Assert.Equal(
            ExitCode.Done, await CommandLine.RunAsync(["plan", "show", "--data", mill.Host.DataFolder], output, error));
        var lines = output.ToString().Split('\n');
        Assert.StartsWith("out of use: P-2. It holds a load. Out of use from ", lines[1], StringComparison.Ordinal);
        var firstSwap = lines.First(l => l.StartsWith("  ", StringComparison.Ordinal));
        Assert.StartsWith("  out of use from ", firstSwap, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("by_hand")]
    [InlineData("locked")]
    [InlineData("proposed")]
    public async Task A_plan_that_leaves_it_in_use_past_its_date_is_refused_over_HTTP_and_by_the_command(string placing)
    {
        await using var mill = await PlannedHost.OpenAsync();
        await LiftAsync(mill);
        using var http = mill.Host.CreateClient();
        var plan = await ShownAsync(http);
        var by = plan.Swaps.Single(s => s.Chain == "P-2").OutOfUseBy;
        var late = plan.Shutdowns.First(s => s.Line == "Press" && s.Start > by).Id;
        var told = JsonSerializer.Serialize(
            new PlanEntryJson(plan.Revision, [new("P-2", late, placing)]), PlanningJson.Default.PlanEntryJson);

        using var request = new HttpRequestMessage(HttpMethod.Put, "/api/v1/plan");
        request.Content = new StringContent(told, Encoding.UTF8, "application/json");
        request.Headers.Add("Idempotency-Key", "k");
        var problem = await ApiCaller.AssertProblemAsync(await http.SendAsync(request, Ct), HttpStatusCode.UnprocessableEntity);
        Assert.Contains("P-2 holds a load: out of use from", problem.GetRawText(), StringComparison.Ordinal);

        var file = Path.Combine(mill.Host.DataFolder, "told.json");
        await File.WriteAllTextAsync(file, told, Ct);
        using var output = new StringWriter();
        using var error = new StringWriter();
        Assert.Equal(
            ExitCode.Refused, await CommandLine.RunAsync(["plan", "save", file, "--data", mill.Host.DataFolder], output, error));
        Assert.Contains(
            "Choose an earlier one, or take the chain out of use by that day.", error.ToString(), StringComparison.Ordinal);
        await using var db = await mill.Host.OpenAsync();
        Assert.Empty(db.Swaps);
    }

    private static async Task LiftAsync(PlannedHost mill)
    {
        await using var db = await mill.Host.OpenAsync();
        db.Chains.Single(c => c.Name == "P-2").Lifts = true;
        await db.SaveChangesAsync(Ct);
    }

    private static async Task<PlanJson> ShownAsync(HttpClient http) =>
        JsonSerializer.Deserialize(await http.GetStringAsync("/api/v1/plan", Ct), PlanningJson.Default.PlanJson)!;
}
