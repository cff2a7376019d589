using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Http;
using WearWatch.Dashboard.Administration.People;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>Before anybody is set up, only programs of this machine that ask for themselves are let in.</summary>
public sealed class NearRequestTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync()
    {
        host.UseKestrel(0);
        host.StartServer();
        return default;
    }

    public ValueTask DisposeAsync() => host.DisposeAsync();

    private Uri Address => host.ClientOptions.BaseAddress;

    [Fact]
    public async Task A_program_of_this_machine_is_let_in()
    {
        using var http = new HttpClient();
        Assert.Equal(HttpStatusCode.OK, (await http.GetAsync(new Uri(Address, "/api/v1/me"), Ct)).StatusCode);
    }

    /// <summary>What the review passed through: no header is added, and the name is this machine's own.</summary>
    [Fact]
    public async Task A_proxy_on_this_machine_that_adds_nothing_does_not_open_the_plant_to_the_network()
    {
        if (!OperatingSystem.IsLinux()) Assert.Skip("The kernel's tables are read on Linux.");
        using var proxy = new TcpListener(IPAddress.Any, 0);
        proxy.Start();
        var forwarding = ForwardAsync(proxy);
        var port = ((IPEndPoint)proxy.LocalEndpoint).Port;
        using var http = new HttpClient();
        var request = new HttpRequestMessage(HttpMethod.Get, $"http://127.0.0.1:{port}/api/v1/me");
        request.Headers.Host = Address.Authority;
        Assert.Equal(HttpStatusCode.Forbidden, (await http.SendAsync(request, Ct)).StatusCode);
        proxy.Stop();
        await Task.WhenAny(forwarding, Task.Delay(1000, Ct));
    }

    [Theory]
    [InlineData("Host", "mill.example")]
    [InlineData("X-Forwarded-For", "192.0.2.7")]
    [InlineData("X-Real-IP", "192.0.2.7")]
    [InlineData("Via", "1.1 proxy")]
    [InlineData("Forwarded", "for=192.0.2.7")]
    public void What_a_proxy_or_a_foreign_name_adds_is_far(string header, string value)
    {
        var http = new DefaultHttpContext();
        (http.Connection.RemoteIpAddress, http.Connection.LocalIpAddress) = (IPAddress.Loopback, IPAddress.Loopback);
        http.Request.Host = new HostString("localhost");
        http.Request.Headers[header] = value;
        Assert.False(NearRequest.IsNear(http));
    }

    [Theory]
    [InlineData("192.0.2.7", "127.0.0.1")]
    [InlineData("127.0.0.1", "192.0.2.1")]
    public void A_request_over_the_network_is_far(string from, string to)
    {
        var http = new DefaultHttpContext();
        (http.Connection.RemoteIpAddress, http.Connection.LocalIpAddress) = (IPAddress.Parse(from), IPAddress.Parse(to));
        http.Request.Host = new HostString("localhost");
        Assert.False(NearRequest.IsNear(http));
    }

    private async Task ForwardAsync(TcpListener proxy)
    {
        using var near = await proxy.AcceptTcpClientAsync(Ct);
        using var far = new TcpClient();
        await far.ConnectAsync(IPAddress.Loopback, Address.Port, Ct);
        await Task.WhenAny(
            near.GetStream().CopyToAsync(far.GetStream(), Ct), far.GetStream().CopyToAsync(near.GetStream(), Ct));
        await Task.Delay(500, Ct);
    }
}
