using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Authorization.Infrastructure;
using Microsoft.AspNetCore.Routing;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Dashboard.Tests.People;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>
/// Every route and method by every identity: who has no right is refused before anything is read (OWASP ASVS 5, V8).
/// </summary>
public sealed partial class EveryRouteTests(StaffedPlant plant) : IClassFixture<StaffedPlant>
{
    /// <summary>What a stranger may ask: how to come in, whether the process lives, in which language.</summary>
    private static readonly string[] open =
    [
        "/error", "/not-found", "/health", "/health/", "/health/live", "/health/ready", "/language", "/people/first",
        "/people/passkeys/use", "/people/refused", "/people/sign-in", "/people/switch",
    ];

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Each_identity_gets_through_exactly_where_its_roles_let_it()
    {
        var policies = plant.Host.Get<IAuthorizationPolicyProvider>();
        var callers = await CallersAsync();
        List<string> wrong = [];
        var asked = 0;
        foreach (var (method, route, endpoint) in Routes())
        {
            if (endpoint.Metadata.GetMetadata<IAllowAnonymous>() is not null)
            {
                if (!open.Contains(route) && !IsFile(route)) wrong.Add($"{method} {route} is open to strangers");
                continue;
            }

            var policy = await AuthorizationPolicy.CombineAsync(
                policies, endpoint.Metadata.GetOrderedMetadata<IAuthorizeData>()) ?? await policies.GetFallbackPolicyAsync();
            foreach (var (name, http, roles) in callers)
            {
                asked++;
                var status = await AskAsync(http, method, route);
                string[] needed =
                    [.. policy!.Requirements.OfType<RolesAuthorizationRequirement>().SelectMany(r => r.AllowedRoles)];
                var may = roles is not null && (needed.Length == 0 || needed.Intersect(roles).Any());
                var isRefused = status is HttpStatusCode.Unauthorized or HttpStatusCode.Forbidden;
                var leadsAway = status is HttpStatusCode.Found;
                if (may ? isRefused : !isRefused && !leadsAway)
                    wrong.Add($"{name}: {method} {route} answers {(int)status}, may: {may}");
            }
        }

        Assert.True(asked > 500, $"only {asked} were asked");
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    /// <summary>A method that browsers send without a thought changes nothing.</summary>
    [Fact]
    public void What_changes_something_is_no_GET() => Assert.Empty(Routes()
        .Where(r => r.Method == "GET" && r.Endpoint.Metadata.GetOrderedMetadata<IAuthorizeData>().Any(a =>
            a.Policy is Allowed.MeasureAndDo or Allowed.KeepRegister) && r.Route.StartsWith("/api/", StringComparison.Ordinal))
        .Select(r => r.Route));

    private async Task<List<(string Name, HttpClient Http, IReadOnlyList<string>? Roles)>> CallersAsync()
    {
        var keys = plant.Host.Get<KeyDesk>();
        List<(string, HttpClient, IReadOnlyList<string>?)> callers =
        [
            ("a stranger", plant.Host.CreateClient(new() { AllowAutoRedirect = false }), null),
            ("a reader", plant.Reader.Http, []),
            ("a technician", plant.Technician.Http, RoleWords.Of(PersonRoles.Technician)),
        ];
        foreach (var role in new[] { PersonRoles.Technician, PersonRoles.Planner, PersonRoles.Engineer })
        {
            var http = plant.Host.CreateClient(new() { AllowAutoRedirect = false });
            http.DefaultRequestHeaders.Authorization = new("Bearer", (await keys.MakeAsync($"Key {role}", role, "Ada", Ct)).Key);
            callers.Add(($"a key that is {role}", http, RoleWords.Of(role)));
        }

        var withdrawn = plant.Host.CreateClient(new() { AllowAutoRedirect = false });
        withdrawn.DefaultRequestHeaders.Authorization = new("Bearer", "ww_nothing");
        callers.Add(("an unknown key", withdrawn, null));
        return callers;
    }

    private static async Task<HttpStatusCode> AskAsync(HttpClient http, string method, string route)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), Parameter().Replace(route, "1"));
        return (await http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, Ct)).StatusCode;
    }

    private IEnumerable<(string Method, string Route, RouteEndpoint Endpoint)> Routes() =>
        from endpoint in plant.Host.Get<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
        from method in endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["GET"]
        let route = endpoint.RoutePattern.RawText ?? ""
        where method is not ("HEAD" or "OPTIONS") && !route.Contains('*', StringComparison.Ordinal)
        select (method, route.StartsWith('/') ? route : "/" + route, endpoint);

    private static bool IsFile(string route) =>
        Path.GetExtension(route).Length > 0 || route.StartsWith("/floor", StringComparison.Ordinal);

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Parameter();
}
