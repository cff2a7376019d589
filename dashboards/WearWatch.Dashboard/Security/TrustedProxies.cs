using System.Net;
using Microsoft.AspNetCore.HttpOverrides;
using IPNetwork = System.Net.IPNetwork;

namespace WearWatch.Dashboard.Security;

/// <summary>Believes forwarded headers from the proxies that the settings name, and from nobody else.</summary>
internal static class TrustedProxies
{
    private const string Setting = "WearWatch:TrustedProxies";

    /// <summary>Adds them. None named: forwarded headers change nothing, whatever the environment switches on.</summary>
    /// <exception cref="FormatException">What is named is neither an address nor a network.</exception>
    public static IServiceCollection AddTrustedProxies(this IServiceCollection services, IConfiguration configuration)
    {
        string[] named = [.. (configuration[Setting] ?? "")
            .Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
        var networks = named.Select(Read).ToList();
        return services.PostConfigure<ForwardedHeadersOptions>(options =>
        {
            options.KnownProxies.Clear();
            options.KnownIPNetworks.Clear();
            foreach (var network in networks) options.KnownIPNetworks.Add(network);
            options.ForwardedHeaders = networks.Count == 0
                ? ForwardedHeaders.None
                : ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto | ForwardedHeaders.XForwardedHost;
            options.ForwardLimit = networks.Count == 0 ? 1 : networks.Count;
        });
    }

    private static IPNetwork Read(string text)
    {
        if (IPNetwork.TryParse(text, out var network)) return network;
        if (IPAddress.TryParse(text, out var one)) return new IPNetwork(one, one.GetAddressBytes().Length * 8);
        throw new FormatException(
            $"{Setting}: '{text}' is neither an address nor a network. Name proxies such as 127.0.0.1 or 10.0.0.0/24.");
    }
}
