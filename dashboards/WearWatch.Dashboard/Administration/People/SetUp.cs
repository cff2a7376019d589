using System.Net;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Whether the plant has people yet. Until it has, the dashboard is open, to this machine only.</summary>
public sealed class SetUp(IDbContextFactory<WearDb> database)
{
    private volatile bool done; // people are never deleted, so a yes stays

    /// <summary>Whether anybody is set up.</summary>
    public async ValueTask<bool> IsDoneAsync(CancellationToken ct = default)
    {
        if (done) return true;
        await using var db = await database.CreateDbContextAsync(ct);
        return done = await db.People.AnyAsync(ct);
    }

    /// <summary>
    /// Whether a request comes from this machine and not through a proxy, which would make everybody look near.
    /// </summary>
    /// <remarks>Without an address it did not come over a network at all.</remarks>
    public static bool IsNear(HttpContext http)
    {
        var headers = http.Request.Headers;
        if (headers.ContainsKey("Forwarded") || headers.ContainsKey("X-Forwarded-For") || headers.ContainsKey("X-Original-For"))
            return false;
        return http.Connection.RemoteIpAddress is not { } from || IPAddress.IsLoopback(from);
    }

    /// <summary>Whether an address on which the dashboard listens can be reached from this machine only.</summary>
    public static bool IsNear(string url) => BindingAddress.Parse(url) switch
    {
        { IsUnixPipe: true } or { IsNamedPipe: true } => true,
        var address => address.Host == "localhost" || (IPAddress.TryParse(address.Host, out var ip) && IPAddress.IsLoopback(ip)),
    };
}
