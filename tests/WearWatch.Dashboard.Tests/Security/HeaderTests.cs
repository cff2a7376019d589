using System.Net;
using WearWatch.Dashboard.Tests.People;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>What every answer tells the browser (OWASP ASVS 5, V3.4 and V14.3.2).</summary>
public sealed class HeaderTests(StaffedPlant plant) : IClassFixture<StaffedPlant>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/")]
    [InlineData("/people/sign-in")]
    [InlineData("/api/v1/chains")]
    [InlineData("/api/v1/nowhere")]
    [InlineData("/engineering/history/readings.csv")]
    public async Task Nothing_is_loaded_from_elsewhere_framed_guessed_or_kept(string path)
    {
        var answer = await plant.Administrator.Http.GetAsync(path, Ct);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        foreach (var rule in new[] { "default-src 'self'", "object-src 'none'", "base-uri 'self'", "frame-ancestors 'self'" })
            Assert.Contains(rule, policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script-src 'self' 'unsafe", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.True(answer.Headers.CacheControl?.NoStore, $"{answer.Headers.CacheControl}");
        Assert.False(answer.Headers.Contains("Access-Control-Allow-Origin"));
    }

    [Theory]
    [InlineData("https://localhost", true)]
    [InlineData("http://localhost", false)]
    public async Task Over_https_the_browser_is_told_to_stay_there_and_cookies_too(string address, bool isSecure)
    {
        using var http = plant.Host.CreateClient(new() { BaseAddress = new Uri(address), AllowAutoRedirect = false });
        var answer = await http.GetAsync("/people/sign-in", Ct);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(isSecure, answer.Headers.Contains("Strict-Transport-Security"));
        Assert.All(answer.Headers.GetValues("Set-Cookie"), cookie =>
            Assert.Equal(isSecure, cookie.Contains("; secure", StringComparison.OrdinalIgnoreCase)));
    }
}
