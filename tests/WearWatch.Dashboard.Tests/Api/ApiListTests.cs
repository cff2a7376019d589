using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using WearWatch.Dashboard.Tests.Shell;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Api;

/// <summary>Every list of the API is read in one way: by cursor, by members, and not twice.</summary>
public sealed partial class ApiListTests(DemoMillHost mill) : IClassFixture<DemoMillHost>
{
    private static readonly string[] wishes = ["take", "cursor", "fields"];

    /// <summary>What goes with every row of a chain that lifts.</summary>
    private static readonly string[] cautions = ["caution", "cautions", "lifting"];

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_list_is_walked_by_its_cursor_gives_some_members_and_says_when_nothing_is_new()
    {
        await AddReportsAsync();
        var lists = await ListsAsync();
        Assert.True(lists.Count >= 13, string.Join('\n', lists));
        var (walked, wrong) = (0, new List<string>());
        foreach (var list in lists)
        {
            var first = list == "/api/v1/chains" ? "cursor=" : "";
            var whole = await RowsAsync(await GetAsync($"{list}?{first}&take=1000"));
            if (whole.Count > 1) walked++;
            var pages = new List<string>();
            var next = $"{list}?{first}&take={Math.Max(1, whole.Count / 3)}";
            for (var page = 0; next is not null && page < 10; page++)
            {
                var answer = await GetAsync(next);
                pages.AddRange(await RowsAsync(answer));
                next = NextOf(answer);
            }

            if (!whole.SequenceEqual(pages)) wrong.Add($"{list}: {whole.Count} rows, by cursor {pages.Count}");
            wrong.AddRange(await FaultsAsync(list, whole));
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.True(walked >= 8, $"only {walked} lists of two rows and more");
    }

    [Fact]
    public async Task No_wish_takes_what_is_said_of_a_chain_that_lifts_from_its_row()
    {
        var rows = (await RowsAsync(await GetAsync("/api/v1/chains?fields=chain&take=1000"))).ConvertAll(r => JsonNode.Parse(r)!);
        var lifting = await RowsAsync(await GetAsync("/api/v1/lifting?fields=chain"));
        Assert.Equal(
            lifting.Select(r => (string)JsonNode.Parse(r)!["chain"]!).Order(),
            rows.Where(r => r["lifting"] is not null).Select(r => (string)r["chain"]!).Order());
        Assert.NotEmpty(lifting);
    }

    [Fact]
    public async Task A_row_that_is_gone_when_its_page_ended_leaves_no_other_out()
    {
        await AddReportsAsync();
        const string list = "/api/v1/work-orders";
        var whole = await RowsAsync(await GetAsync(list));
        var page = await GetAsync($"{list}?take=1");
        await using (var db = await mill.OpenAsync())
        {
            db.WorkOrderReports.Remove(db.WorkOrderReports.OrderByDescending(r => r.Id).First());
            await db.SaveChangesAsync(Ct);
        }

        var rest = NextOf(page)!.Replace("take=1&", "", StringComparison.Ordinal);
        Assert.Equal(whole.Skip(1), await RowsAsync(await GetAsync(rest)));
    }

    private async Task<List<string>> FaultsAsync(string list, List<string> whole)
    {
        List<string> wrong = [];
        var answer = await GetAsync(list);
        using var again = new HttpRequestMessage(HttpMethod.Get, list);
        again.Headers.IfNoneMatch.Add(answer.Headers.ETag!);
        var known = await mill.Client.SendAsync(again, Ct);
        if (known.StatusCode != HttpStatusCode.NotModified) wrong.Add($"{list}: {known.StatusCode} for what is known");
        foreach (var bad in new[] { "take=0", "take=1001", "cursor=x", "fields=nothing_of_the_kind" })
        {
            var refused = await mill.Client.GetAsync($"{list}?{bad}", Ct);
            if (refused.StatusCode != HttpStatusCode.UnprocessableEntity) wrong.Add($"{list}?{bad}: {refused.StatusCode}");
        }

        if (whole.Count == 0) return wrong;
        var member = JsonNode.Parse(whole[0])!.AsObject().First().Key;
        foreach (var some in await RowsAsync(await GetAsync($"{list}?fields={member}")))
        {
            var row = JsonNode.Parse(some)!.AsObject();
            if (!row.ContainsKey(member) || row.Any(m => m.Key != member && (!cautions.Contains(m.Key) || m.Value is null)))
                wrong.Add($"{list}: {some} for {member}");
        }

        return wrong;
    }

    /// <summary>The lists as the API describes itself: what answers with an array, or with one among counts.</summary>
    private async Task<List<string>> ListsAsync()
    {
        var described = JsonNode.Parse(await mill.Client.GetStringAsync("/openapi/v1.json", Ct))!;
        List<string> lists = [];
        foreach (var (path, operations) in described["paths"]!.AsObject())
        {
            if (operations!["get"] is not { } get || path.StartsWith("/api/v1/history", StringComparison.Ordinal)) continue;
            var schema = get["responses"]!["200"]?["content"]?["application/json"]?["schema"];
            if (!IsList(described, schema)) continue;
            var parameters = get["parameters"]!.AsArray().Select(p => (string)p!["name"]!).ToList();
            Assert.True(wishes.All(parameters.Contains), $"{path}: {string.Join(", ", parameters)}");
            var chain = path.EndsWith("/link-measures", StringComparison.Ordinal) ? "chain of links" : "chain";
            lists.Add(path.Replace("{chain}", Uri.EscapeDataString(mill.Samples[chain]), StringComparison.Ordinal));
        }

        return lists;
    }

    private static bool IsList(JsonNode described, JsonNode? schema) => schema switch
    {
        null => false,
        _ when (string?)schema["type"] == "array" => true,
        _ when (string?)schema["$ref"] is { } name && described["components"]!["schemas"]![name.Split('/')[^1]] is { } page =>
            page["properties"]?["total"] is not null,
        _ => false,
    };

    private async Task<HttpResponseMessage> GetAsync(string address)
    {
        var answer = await mill.Client.GetAsync(address, Ct);
        Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{address}: {answer.StatusCode}");
        return answer;
    }

    private static async Task<List<string>> RowsAsync(HttpResponseMessage answer)
    {
        var body = JsonNode.Parse(await answer.Content.ReadAsStringAsync(Ct))!;
        var rows = body as JsonArray ?? body.AsObject().Select(m => m.Value).OfType<JsonArray>().Single();
        return [.. rows.Select(r => r!.ToJsonString())];
    }

    private static string? NextOf(HttpResponseMessage answer) =>
        answer.Headers.TryGetValues("Link", out var links) ? Next().Match(links.Single()).Groups[1].Value : null;

    private async Task AddReportsAsync()
    {
        await using var db = await mill.OpenAsync();
        if (db.WorkOrderReports.Any()) return;
        db.WorkOrderReports.AddRange(Enumerable.Range(0, 5).Select(i => new WorkOrderReportRow
        {
            Key = $"k{i}",
            Fingerprint = "f",
            Swap = $"swap-{900 + i}",
            Standing = WorkOrderStanding.OursKept,
        }));
        await db.SaveChangesAsync(Ct);
    }

    [GeneratedRegex("<(.+)>; rel=\"next\"")]
    private static partial Regex Next();
}
