using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Time.Testing;
using WearWatch.Chains;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Rounds;
using WearWatch.Rounds;

namespace WearWatch.Dashboard.Tests.Rounds;

public sealed class RoundHostTests : IAsyncLifetime
{
    // A round is of a day: a clock that stands still keeps midnight out of the tests.
    private static readonly DateTimeOffset Now = new(2026, 10, 5, 9, 0, 0, TimeSpan.Zero);

    private readonly DashboardHost host = new() { Clock = new FakeTimeProvider(Now) };

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => await host.Get<FileImport>().ImportAsync(SmallPlant.Files, null, Ct);

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task Measuring_oiling_and_looking_fall_due_and_are_ticked_off_once_they_are_done()
    {
        var due = Assert.Single((await host.Get<RoundDesk>().AskAsync(Ct)).Rounds);
        Assert.Equal("Press", due.Line);
        Assert.Equal(["K-1", "K-2"], due.Stops.Select(s => s.Chain.Row.Name));
        Assert.Equal(6, due.All); // both chains were last measured, oiled and looked at long ago, or never
        Assert.Equal(0, due.Done);

        await host.Get<IntakeDesk>().TakeEventAsync(
            Told("oil", new() { Chain = "K-2", Kind = ChainEventKind.Oiling, At = Now }), Ct);
        await host.Get<IntakeDesk>().TakeEventAsync(
            Told("look", new() { Chain = "K-1", Kind = ChainEventKind.Inspection, At = Now }), Ct);
        var after = Assert.Single((await host.Get<RoundDesk>().AskAsync(Ct)).Rounds);
        // A look at a chain with an oiler is a look at the oiler, too.
        Assert.Equal(3, after.Done);
        Assert.Equal(6, after.All);
    }

    [Fact]
    public async Task A_round_is_taken_and_given_back_and_a_repeated_request_changes_nothing()
    {
        using var client = host.CreateClient();
        Assert.Equal("ann", await HandAsync(client, "h1", "ann", false));
        Assert.Equal("ben", await HandAsync(client, "h2", "ben", false));
        Assert.Equal("ben", await HandAsync(client, "h1", "ann", false));
        var pack = await client.GetFromJsonAsync<JsonElement>("/api/v1/floor/pack", Ct);
        Assert.Equal("ben", pack.GetProperty("hands").GetProperty("Press").GetString());
        Assert.Null(await HandAsync(client, "h3", "ben", true));
        await using var db = await host.OpenAsync();
        Assert.Equal(3, await db.RoundHands.CountAsync(Ct));
    }

    [Fact]
    public async Task The_plant_sets_the_order_in_which_it_is_walked()
    {
        var order = (await host.Get<FloorQuery>().AskAsync(Ct)).Select(c => (c.Row.Id, c.Row.Line)).ToList();
        await host.Get<RoundDesk>().SetOrderAsync(WalkMoves.Earlier(order, order[1].Id), Ct);
        Assert.Equal([order[1].Id, order[0].Id], (await host.Get<FloorQuery>().AskAsync(Ct)).Select(c => c.Row.Id));
        await host.Get<RoundDesk>().SetOrderAsync([order[0].Id, order[1].Id], Ct);
        Assert.Equal([order[0].Id, order[1].Id], (await host.Get<FloorQuery>().AskAsync(Ct)).Select(c => c.Row.Id));
    }

    [Fact]
    public void Lines_and_places_move_one_step_and_never_across_lines()
    {
        (int, string)[] order = [(1, "A"), (2, "A"), (3, "B"), (4, "B")];
        Assert.Equal([2, 1, 3, 4], WalkMoves.Earlier(order, 2));
        Assert.Equal([1, 2, 3, 4], WalkMoves.Earlier(order, 3));
        Assert.Equal([1, 2, 3, 4], WalkMoves.Earlier(order, 1));
        Assert.Equal([3, 4, 1, 2], WalkMoves.LineEarlier(order, "B"));
        Assert.Equal([1, 2, 3, 4], WalkMoves.LineEarlier(order, "A"));
    }

    [Fact]
    public async Task What_is_printed_stands_on_plain_documents()
    {
        using var client = host.CreateClient();
        var sheet = await client.GetStringAsync("/rounds/sheet", Ct);
        Assert.Contains("K-1", sheet, StringComparison.Ordinal);
        Assert.Contains(Caution.BeforeTouching.ToString(), sheet, StringComparison.Ordinal);
        var labels = await client.GetStringAsync("/labels?line=Press", Ct);
        Assert.Equal(2, labels.Split("class=\"label\"").Length - 1);
        Assert.Contains("<svg", labels, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", labels, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/rounds", Ct)).StatusCode);
        Assert.Equal(0, (await client.GetStringAsync("/labels?line=elsewhere", Ct)).Split("class=\"label\"").Length - 1);
    }

    [Fact]
    public async Task The_phone_gets_every_task_with_its_reason()
    {
        var pack = await host.CreateClient().GetFromJsonAsync<JsonElement>("/api/v1/floor/pack", Ct);
        var tasks = pack.GetProperty("chains")[0].GetProperty("tasks").EnumerateArray().ToList();
        Assert.Equal(Enum.GetValues<RoundTaskKind>().Length, tasks.Count);
        Assert.All(tasks, task => Assert.NotEmpty(task.GetProperty("why").GetString()!));
    }

    [Fact]
    public async Task The_phone_gets_how_each_lubrication_is_recorded_and_what_is_usual_there()
    {
        await host.Get<IntakeDesk>().TakeEventAsync(Told("oil", new()
        {
            Chain = "K-2",
            Kind = ChainEventKind.Oiling,
            At = Now.AddDays(-9),
            Oil = new OilApplied(OilMethod.Hand, "ISO VG 150", 20),
        }), Ct);
        var pack = await host.CreateClient().GetFromJsonAsync<JsonElement>("/api/v1/floor/pack", Ct);
        var oils = pack.GetProperty("chains").EnumerateArray().ToDictionary(
            chain => chain.GetProperty("chain").GetString()!, chain => chain.GetProperty("oil"));
        Assert.Equal("inspection", oils["K-1"].GetProperty("entry").GetString());
        Assert.Equal(("tap", "hand", 20), (oils["K-2"].GetProperty("entry").GetString(),
            oils["K-2"].GetProperty("method").GetString(), oils["K-2"].GetProperty("amount_ml").GetDouble()));
    }

    private static NewEvent Told(string key, ChainEvent told) => new() { Key = key, Told = told, ToldBy = "test" };

    private static async Task<string?> HandAsync(HttpClient client, string key, string by, bool givesBack)
    {
        var day = DateOnly.FromDateTime(Now.Date);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/floor/rounds")
        {
            Content = JsonContent.Create(new { line = "Press", day, gives_back = givesBack, by }),
        };
        request.Headers.Add("Idempotency-Key", key);
        var answer = await (await client.SendAsync(request, Ct)).Content.ReadFromJsonAsync<JsonElement>(Ct);
        return answer.GetProperty("person").GetString();
    }
}
