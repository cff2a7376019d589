using Microsoft.Extensions.Configuration.Memory;

namespace WearWatch.Dashboard.Security;

/// <summary>What holds however the program is started, from whichever folder, and with its settings file or without.</summary>
internal static class SafeStart
{
    private const string Settings = "appsettings.json";

    /// <summary>Started from elsewhere, the program finds its settings and files where it lies itself.</summary>
    public static WebApplicationOptions Options(string[] args)
    {
        var saysWhere = args.Any(a => a.Contains("contentRoot", StringComparison.OrdinalIgnoreCase));
        return new() { Args = args, ContentRootPath = saysWhere || File.Exists(Settings) ? null : AppContext.BaseDirectory };
    }

    /// <summary>Without settings it listens to this machine only, and answers to no other name.</summary>
    public static void AddDefaults(IConfigurationBuilder configuration) => configuration.Sources.Insert(
        0, new MemoryConfigurationSource
        {
            InitialData =
            [
                new("AllowedHosts", "localhost;127.0.0.1;[::1]"),
                new("Kestrel:Endpoints:Loopback:Url", "http://localhost:5080"),
            ],
        });
}
