using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Authorization.Policy;
using Microsoft.AspNetCore.Http;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>
/// An error keeps its name: status and problem by RFC 9457 for programs, the same status and a page for people.
/// </summary>
public sealed class ErrorNameTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();
    private HttpClient http = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync()
    {
        var failing = host.WithWebHostBuilder(b => b.ConfigureServices(s =>
            s.AddSingleton<IAuthorizationMiddlewareResultHandler, Failing>()));
        http = failing.CreateClient(new() { AllowAutoRedirect = false });
        return default;
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Theory]
    [InlineData("GET", "bug", 500)]
    [InlineData("PUT", "bug", 500)]
    [InlineData("POST", "bug", 500)]
    [InlineData("DELETE", "bug", 500)]
    [InlineData("POST", "full", 507)]
    [InlineData("PUT", "away", 503)]
    [InlineData("POST", "large", 413)]
    public async Task What_fails_is_told_by_its_own_status_whatever_the_method(string method, string fault, int status)
    {
        var api = await SendAsync(method, "/api/v1/chains?fails=" + fault);
        Assert.Equal(status, (int)api.StatusCode);
        Assert.Equal("application/problem+json", api.Content.Headers.ContentType?.MediaType);
        var problem = await api.Content.ReadFromJsonAsync<JsonElement>(Ct);
        Assert.Equal(status, problem.GetProperty("status").GetInt32());
        Assert.NotEqual("", problem.GetProperty("detail").GetString());
        Assert.DoesNotContain("secret", problem.ToString(), StringComparison.OrdinalIgnoreCase);

        var page = await SendAsync(method, "/chains?fails=" + fault);
        Assert.Equal(status, (int)page.StatusCode);
        Assert.Contains("Something went wrong on our side", await page.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("DELETE", "/api/v1/readings", 405)]
    [InlineData("GET", "/api/v1/nowhere", 404)]
    [InlineData("POST", "/api/v1/readings", 415)]
    public async Task What_the_routes_refuse_is_a_problem_too(string method, string path, int status)
    {
        var answer = await SendAsync(method, path, new StringContent("x", Encoding.UTF8, "text/plain"));
        Assert.Equal(status, (int)answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
    }

    // What 2,476 requests of a review found unhandled.
    [Theory]
    [InlineData("/api/v1/readings", "application/json; charset=nonsense", "{}", 415)]
    [InlineData("/api/v1/imports", "multipart/form-data; boundary=x", "not a form", 400)]
    [InlineData("/api/v1/inspections", "application/json", """{"chain":"K-1","findings":[null]}""", 422)]
    [InlineData("/api/v1/readings", "application/json", """{"chain":"K-1","place":"\u0000"}""", 400)]
    public async Task Broken_bodies_are_refused_by_name(string path, string type, string body, int status)
    {
        var content = new ByteArrayContent(Encoding.UTF8.GetBytes(body));
        content.Headers.TryAddWithoutValidation("Content-Type", type);
        Assert.Equal(status, (int)(await SendAsync("POST", path, content)).StatusCode);
    }

    [Fact]
    public async Task A_date_of_the_year_one_and_a_tab_in_an_address_break_nothing()
    {
        Assert.Equal(422, (int)(await http.GetAsync("/api/v1/chains?due_before=0001-01-01", Ct)).StatusCode);
        Assert.Equal(200, (int)(await http.GetAsync("/chains?due=0001-01-01", Ct)).StatusCode);
        var answer = await http.PostAsync("/units", new FormUrlEncodedContent([new("back", "/\tx"), new("length", "in")]), Ct);
        Assert.Equal((HttpStatusCode.Found, "/"), (answer.StatusCode, answer.Headers.Location!.OriginalString));
    }

    private Task<HttpResponseMessage> SendAsync(string method, string path, HttpContent? content = null)
    {
        var request = new HttpRequestMessage(new HttpMethod(method), path) { Content = content };
        request.Headers.Add("Idempotency-Key", Guid.NewGuid().ToString());
        return http.SendAsync(request, Ct);
    }

    /// <summary>Fails inside the pipeline, where an endpoint would.</summary>
    private sealed class Failing : IAuthorizationMiddlewareResultHandler
    {
        public Task HandleAsync(
            RequestDelegate next, HttpContext context, AuthorizationPolicy policy, PolicyAuthorizationResult authorizeResult) =>
            context.Request.Query["fails"].ToString() switch
            {
                "bug" => throw new InvalidOperationException("secret"),
                "full" => throw new SqliteException("database or disk is full", 13),
                "away" => throw new SqliteException("database is locked", 5),
                "large" => throw new BadHttpRequestException("too large", 413),
                _ => next(context),
            };
    }
}
