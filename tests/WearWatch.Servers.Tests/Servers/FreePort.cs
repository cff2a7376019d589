using System.Net;
using System.Net.Sockets;

namespace WearWatch.Servers.Tests.Servers;

/// <summary>A port of this machine that nobody uses.</summary>
internal static class FreePort
{
    public static int Find()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
