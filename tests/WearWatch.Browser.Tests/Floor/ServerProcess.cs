using System.Diagnostics;
using System.Text.RegularExpressions;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>The dashboard as a process of its own, so that it can be killed like a machine that loses its power.</summary>
internal sealed partial class ServerProcess : IAsyncDisposable
{
    private readonly string dataFolder = Directory.CreateTempSubdirectory("wearwatch-server-").FullName;
    private Process? process;

    public string Address { get; private set; } = "";

    /// <summary>Starts it: on a free port the first time, on the same one again after that.</summary>
    public async Task StartAsync()
    {
        // Beside the tests' own output: artifacts/bin/PROJECT/CONFIGURATION.
        var own = new DirectoryInfo(AppContext.BaseDirectory);
        var program = Path.Combine(own.Parent!.Parent!.FullName, "WearWatch.Dashboard", own.Name, "WearWatch.Dashboard.dll");
        var start = new ProcessStartInfo("dotnet", [program])
        {
            WorkingDirectory = Path.GetDirectoryName(program),
            RedirectStandardOutput = true,
        };
        start.Environment["ASPNETCORE_ENVIRONMENT"] = "Development"; // static files of packages are served unpublished only there
        start.Environment["Kestrel__Endpoints__Loopback__Url"] = Address.Length > 0 ? Address : "http://127.0.0.1:0";
        start.Environment["WearWatch__DataFolder"] = dataFolder;
        process = Process.Start(start)!;
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (Listening().Match(line) is not { Success: true } match) continue;
            Address = match.Groups["address"].Value;
            _ = process.StandardOutput.ReadToEndAsync();
            return;
        }

        throw new InvalidOperationException($"The server ended with {process.ExitCode} before it listened.");
    }

    /// <summary>Ends it without a word.</summary>
    public async Task KillAsync()
    {
        process!.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (process is { HasExited: false }) await KillAsync();
        process?.Dispose();
        Directory.Delete(dataFolder, recursive: true);
    }

    [GeneratedRegex("Now listening on: (?<address>http://[^ ]+)")]
    private static partial Regex Listening();
}
