using System.Globalization;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Routing;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Tests.Architecture;

namespace WearWatch.Dashboard.Tests.Api;

/// <summary>Every error of the API, by all its routes: RFC 9457, a kind that the docs explain, a sentence as asked.</summary>
public sealed partial class ApiProblemTests(DashboardHost plant) : IClassFixture<DashboardHost>
{
    private readonly HttpClient client = plant.CreateClient();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_route_refuses_nonsense_with_a_kind_of_the_docs_and_in_the_asked_language()
    {
        List<string> faults = [];
        var problems = 0;
        foreach (var (method, route) in Routes())
        {
            foreach (var withKey in new[] { true, false })
            {
                using var request = Nonsense(method, route, withKey);
                using var answer = await client.SendAsync(request, Ct);
                if (answer.IsSuccessStatusCode) continue;
                problems++;
                faults.AddRange((await FaultsAsync(answer)).Select(fault => $"{method} {route}: {fault}"));
            }
        }

        Assert.Empty(faults);
        Assert.True(problems > 40, $"{problems} of the routes refused nonsense.");
    }

    [Fact]
    public void The_docs_name_every_kind_with_its_status()
    {
        var page = File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "api-errors.md"));
        var named = Row().Matches(page).ToDictionary(
            m => m.Groups[1].Value, m => int.Parse(m.Groups[2].Value, CultureInfo.InvariantCulture));
        Assert.Equal(Problems.Kinds.OrderBy(k => k.Key), named.OrderBy(k => k.Key));
    }

    [Fact]
    public async Task A_refusal_says_its_field_its_form_and_its_figures()
    {
        using var request = Nonsense("GET", "/api/v1/chains", withKey: false);
        request.RequestUri = new Uri("/api/v1/chains?take=5000", UriKind.Relative);
        var answer = await client.SendAsync(request, Ct);
        var problem = await answer.Content.ReadFromJsonAsync<JsonElement>(Ct);
        var refusal = Assert.Single(problem.GetProperty("refusals").EnumerateArray());
        Assert.Equal(("take", "1 to {0}.", 1000), (refusal.GetProperty("field").GetString(),
            refusal.GetProperty("form").GetString(), refusal.GetProperty("figures")[0].GetInt32()));
        Assert.Equal("1 bis 1000.", problem.GetProperty("errors").GetProperty("take")[0].GetString());
    }

    private IEnumerable<(string Method, string Route)> Routes() =>
        from endpoint in plant.Get<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
        let route = "/" + endpoint.RoutePattern.RawText!.Trim('/')
        where route.StartsWith("/api/v1", StringComparison.Ordinal)
        from method in endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["GET"]
        select (method, route);

    /// <summary>A request of something that is not there, with a body that says nothing.</summary>
    private static HttpRequestMessage Nonsense(string method, string route, bool withKey)
    {
        var address = Parameter().Replace(route, part =>
            part.Groups[1].Value.Contains(":int", StringComparison.Ordinal)
                || part.Groups[1].Value.Contains(":long", StringComparison.Ordinal) ? "999999" : "nothing-of-that-name");
        var request = new HttpRequestMessage(new HttpMethod(method), address);
        request.Headers.Add("Accept-Language", "de");
        if (withKey) request.Headers.Add("Idempotency-Key", Guid.NewGuid().ToString());
        if (method is "POST" or "PUT") request.Content = new StringContent("{}", Encoding.UTF8, "application/json");
        return request;
    }

    private static async Task<IReadOnlyList<string>> FaultsAsync(HttpResponseMessage answer)
    {
        if (answer.Content.Headers.ContentType?.MediaType != "application/problem+json")
            return [$"{(int)answer.StatusCode} {answer.Content.Headers.ContentType}"];
        var problem = await answer.Content.ReadFromJsonAsync<JsonElement>(Ct);
        var kind = problem.TryGetProperty("kind", out var said) ? said.GetString()! : "no kind";
        if (!Problems.Kinds.TryGetValue(kind, out var status) || status != (int)answer.StatusCode)
            return [$"{(int)answer.StatusCode} {kind}"];
        var title = problem.GetProperty("title").GetString()!;
        return English().IsMatch(title) ? [$"{title} is not German"] : [];
    }

    [GeneratedRegex(@"\{([^}]+)\}")]
    private static partial Regex Parameter();

    [GeneratedRegex(@"^\| `(\w+)` \| (\d{3}) \|", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex(@"\b(was|not|the|cannot|request)\b", RegexOptions.IgnoreCase)]
    private static partial Regex English();
}
