using System.Net;
using System.Net.WebSockets;
using System.Text;
using WearWatch.Dashboard.Tests.People;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>What the real server refuses before it reads: large bodies, and live connections from other sites' pages.</summary>
public sealed class BodyLimitTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private Uri Address => host.ClientOptions.BaseAddress;

    public ValueTask InitializeAsync()
    {
        host.UseKestrel(0);
        host.StartServer();
        return default;
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Theory]
    [InlineData("/people/sign-in", "application/x-www-form-urlencoded", 300_000)]
    [InlineData("/api/v1/readings", "application/json", 300_000)]
    [InlineData("/api/v1/inspections/x/photos/general", "image/jpeg", 2_100_000)]
    public async Task A_body_that_is_too_large_for_its_address_is_not_read(string path, string type, int bytes)
    {
        using var http = new HttpClient();
        var content = new ByteArrayContent(new byte[bytes]);
        content.Headers.ContentType = new(type);
        var request = new HttpRequestMessage(HttpMethod.Post, new Uri(Address, path)) { Content = content };
        request.Headers.Add("Idempotency-Key", "large");
        request.Headers.ExpectContinue = true;
        var answer = await http.SendAsync(request, Ct);
        Assert.True(
            answer.StatusCode is HttpStatusCode.RequestEntityTooLarge or HttpStatusCode.UnprocessableEntity
                or HttpStatusCode.BadRequest, // the framework's check of a form's token says so
            $"{answer.StatusCode}");
    }

    [Fact]
    public async Task A_file_of_readings_may_be_larger()
    {
        using var http = new HttpClient();
        using var form = new MultipartFormDataContent();
        var file = Encoding.UTF8.GetBytes("chain,pitch_mm\n" + new string(' ', 600_000));
        form.Add(new ByteArrayContent(file), "file", "chains.csv");
        var request =
            new HttpRequestMessage(HttpMethod.Post, new Uri(Address, "/api/v1/imports?preview=true")) { Content = form };
        request.Headers.Add("Idempotency-Key", "file");
        Assert.Equal(HttpStatusCode.OK, (await http.SendAsync(request, Ct)).StatusCode);
    }

    [Theory]
    [InlineData("https://evil.example", false)]
    [InlineData("null", false)]
    [InlineData("", true)]
    public async Task A_live_connection_is_opened_by_our_own_pages_only(string origin, bool opens)
    {
        using var socket = new ClientWebSocket();
        if (origin.Length > 0) socket.Options.SetRequestHeader("Origin", origin);
        var address = new UriBuilder(Address) { Scheme = "ws", Path = "/_blazor" }.Uri;
        if (opens)
        {
            await socket.ConnectAsync(address, Ct);
            Assert.Equal(WebSocketState.Open, socket.State);
        }
        else
        {
            var refused = await Assert.ThrowsAsync<WebSocketException>(() => socket.ConnectAsync(address, Ct));
            Assert.Contains("403", refused.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_form_of_another_sites_page_changes_nothing()
    {
        await using var own = new DashboardHost();
        using var caller = new Caller(own);
        await caller.SetUpAsync();
        caller.Http.DefaultRequestHeaders.Add("Origin", "https://evil.example");
        Assert.Equal(HttpStatusCode.Forbidden, (await caller.SendFormAsync("/people/me", "sign-out")).StatusCode);
        caller.Http.DefaultRequestHeaders.Remove("Origin");
        Assert.Equal(HttpStatusCode.OK, (await caller.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
    }
}
