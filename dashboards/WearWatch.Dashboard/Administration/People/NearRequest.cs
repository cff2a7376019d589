using System.Net;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>
/// Whether a request comes from a program on this machine that asks for itself. The rule stands here and in no setting: a missing
/// file, a proxy or a host name cannot widen it.
/// </summary>
public static class NearRequest
{
    // What proxies add. One that adds none of them is found by what it is connected to.
    private static readonly string[] ofProxies =
    [
        "Forwarded", "X-Forwarded-For", "X-Forwarded-Host", "X-Forwarded-Proto", "X-Original-For", "X-Original-Host", "X-Real-IP",
        "Via",
    ];

    /// <summary>Whether it does.</summary>
    /// <remarks>Without an address it did not come over a network at all.</remarks>
    public static bool IsNear(HttpContext http)
    {
        var connection = http.Connection;
        if (ofProxies.Any(http.Request.Headers.ContainsKey)) return false;
        if (connection.RemoteIpAddress is not { } from) return true;
        if (!IPAddress.IsLoopback(from) || connection.LocalIpAddress is not { } to || !IPAddress.IsLoopback(to)) return false;
        return IsOurName(http.Request.Host, connection.LocalPort) && AsksForItself(http, connection);
    }

    private static bool IsOurName(HostString host, int port) =>
        (host.Host == "localhost" || (IPAddress.TryParse(host.Host, out var ip) && IPAddress.IsLoopback(ip)))
            && (host.Port ?? 80) == port;

    // Asked once a connection: it stays with the program that opened it.
    private static bool AsksForItself(HttpContext http, ConnectionInfo connection)
    {
        var items = http.Features.Get<Microsoft.AspNetCore.Connections.Features.IConnectionItemsFeature>()?.Items;
        if (items?.TryGetValue(typeof(NearRequest), out var known) == true) return known is true;
        var near = !OperatingSystem.IsLinux() || !Neighbour.ServesOthers(connection.RemotePort, connection.LocalPort);
        if (items is not null) items[typeof(NearRequest)] = near;
        return near;
    }
}
