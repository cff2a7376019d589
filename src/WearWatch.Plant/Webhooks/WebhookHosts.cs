using System.Net;
using System.Net.Sockets;
using Microsoft.Extensions.Options;

namespace WearWatch.Plant.Webhooks;

/// <summary>Where webhooks may go: the rule against being sent to the plant's own inside (OWASP ASVS 5, 1.3.6).</summary>
/// <remarks>
/// Addresses of private networks are allowed, since a plant's receivers stand there; an administrator enters each. The name is
/// judged when it is entered, the addresses that it stands for before each connection.
/// </remarks>
public sealed class WebhookHosts(IOptions<WebhookOptions> options)
{
    private const int LongestUrl = 2000;

    /// <summary>
    /// Where machines of a cloud ask for their own passwords, beside the link-local ones; recalled, from memory.
    /// </summary>
    private static readonly IPAddress[] metadata =
        [IPAddress.Parse("fd00:ec2::254"), IPAddress.Parse("100.100.100.200"), IPAddress.Parse("192.0.0.192")];

    private static readonly IPNetwork[] closed =
    [
        .. new[]
        {
            "0.0.0.0/8", "169.254.0.0/16", "224.0.0.0/4", "240.0.0.0/4", // RFC 6890, RFC 5771
            "::/128", "fe80::/10", "fec0::/10", "ff00::/8", // RFC 4291, RFC 3879
        }.Select(text => IPNetwork.Parse(text)),
    ];

    /// <summary>The prefixes in whose last or middle bytes an IPv4 address is wrapped: RFC 6052, RFC 3056.</summary>
    private static readonly (IPNetwork Prefix, int At)[] wrapped =
        [(IPNetwork.Parse("64:ff9b::/96"), 12), (IPNetwork.Parse("::/96"), 12), (IPNetwork.Parse("2002::/16"), 2)];

    /// <summary>What stands against an address that is entered; null when it will do.</summary>
    /// <param name="url">The address.</param>
    public Phrase? FaultOf(string url)
    {
        if (url.Length > LongestUrl) return $"An address has at most {LongestUrl:#,0} characters.";
        if (!Uri.TryCreate(url, UriKind.Absolute, out var read) || read.Scheme is not ("https" or "http"))
            return $"An address such as https://orders.example.org/hooks.";
        if (read.UserInfo.Length > 0 || read.Fragment.Length > 0) return $"Leave out user, password and what follows a #.";
        if (IPAddress.TryParse(read.DnsSafeHost, out var ip) && !Allows(ip)) return NotAllowed;
        if (read.Scheme == "http" && !(options.Value.Loopback && read.IsLoopback)) return $"It has to begin with https://.";
        return IsListed(read.IdnHost) ? null : Phrase.Of($"The setting Webhooks:Hosts does not allow this host.");
    }

    /// <summary>Why nothing is sent to an address that a name stands for.</summary>
    public static Phrase NotAllowed =>
        $"The address leads to this machine, into its link-local network or to a group. Nothing is sent there.";

    /// <summary>Whether webhooks may go to an IP address.</summary>
    /// <param name="address">The address to which a connection would be made.</param>
    public bool Allows(IPAddress address)
    {
        var plain = Plain(address);
        return IPAddress.IsLoopback(plain) ? options.Value.Loopback
            : !closed.Any(network => network.Contains(plain)) && !metadata.Contains(plain);
    }

    /// <summary>The IPv4 address that an IPv6 address wraps, else itself.</summary>
    private static IPAddress Plain(IPAddress address)
    {
        if (address.IsIPv4MappedToIPv6) return address.MapToIPv4();
        if (address.AddressFamily != AddressFamily.InterNetworkV6) return address;
        if (address.Equals(IPAddress.IPv6Loopback) || address.Equals(IPAddress.IPv6Any)) return address;
        foreach (var (prefix, at) in wrapped)
            if (prefix.Contains(address)) return new IPAddress(address.GetAddressBytes().AsSpan(at, 4));
        return address;
    }

    private bool IsListed(string host)
    {
        var listed = options.Value.Hosts.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return listed.Length == 0 || listed.Any(one => one.StartsWith("*.", StringComparison.Ordinal)
            ? host.EndsWith(one[1..], StringComparison.OrdinalIgnoreCase)
            : host.Equals(one, StringComparison.OrdinalIgnoreCase));
    }
}
