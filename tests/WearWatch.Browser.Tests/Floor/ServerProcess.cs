using System.Diagnostics;
using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>The dashboard as a process of its own, so that it can be killed like a machine that loses its power.</summary>
internal sealed partial class ServerProcess : IAsyncDisposable
{
    private readonly string dataFolder = Directory.CreateTempSubdirectory("wearwatch-server-").FullName;
    private Process? process;
    private string? updated;

    /// <summary>Where its database lies.</summary>
    public string Database => Path.Combine(dataFolder, "wearwatch.db");

    private readonly TaskCompletionSource<string> code = new();

    public string Address { get; private set; } = "";

    /// <summary>What the system keeps in memory for it, in MB.</summary>
    public double ResidentMb
    {
        get
        {
            process!.Refresh();
            return process.WorkingSet64 / 1e6;
        }
    }

    /// <summary>The code by which the administrator is set up, as the console shows it.</summary>
    public Task<string> Code => code.Task;

    /// <summary>Starts it: on a free port the first time, on the same one again after that.</summary>
    public async Task StartAsync()
    {
        var program = Path.Combine(Program, "WearWatch.Dashboard.dll");
        var start = new ProcessStartInfo("dotnet", [program])
        {
            WorkingDirectory = Path.GetDirectoryName(program),
            RedirectStandardOutput = true,
        };
        start.Environment["ASPNETCORE_ENVIRONMENT"] = "Development"; // static files of packages are served unpublished only there
        start.Environment["Kestrel__Endpoints__Loopback__Url"] = Address.Length > 0 ? Address : "http://127.0.0.1:0";
        start.Environment["WearWatch__DataFolder"] = dataFolder;
        if (updated is not null) start.Environment["ASPNETCORE_STATICWEBASSETS"] = updated;
        process = Process.Start(start)!;
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (Listening().Match(line) is not { Success: true } match) continue;
            Address = match.Groups["address"].Value;
            _ = ReadOnAsync(process.StandardOutput);
            return;
        }

        throw new InvalidOperationException($"The server ended with {process.ExitCode} before it listened.");
    }

    /// <summary>Takes a small plant of a name in: its chains with their ids.</summary>
    public async Task<IReadOnlyList<(int Id, string Name)>> TakeInAsync(HttpClient client, string name)
    {
        var ct = TestContext.Current.CancellationToken;
        using var form = new MultipartFormDataContent();
        foreach (var path in PlantFiles.Write(name))
            form.Add(new ByteArrayContent(await File.ReadAllBytesAsync(path, ct)), "files", Path.GetFileName(path));
        using var request = new HttpRequestMessage(HttpMethod.Post, Address + "/api/v1/imports") { Content = form };
        request.Headers.Add("Idempotency-Key", name);
        (await client.SendAsync(request, ct)).EnsureSuccessStatusCode();
        var pack = await client.GetFromJsonAsync<JsonElement>(Address + "/api/v1/floor/pack", ct);
        return [.. pack.GetProperty("chains").EnumerateArray()
            .Select(c => (c.GetProperty("id").GetInt32(), c.GetProperty("chain").GetString()!))];
    }

    /// <summary>From the next start on it serves another version of the floor: the same with one more line in its look.</summary>
    public void UpdateFloor()
    {
        var files = Path.Combine(dataFolder, "wwwroot") + "/";
        var manifest = File.ReadAllText(Path.Combine(Program, "WearWatch.Dashboard.staticwebassets.runtime.json"));
        var root = JsonDocument.Parse(manifest).RootElement.GetProperty("ContentRoots")[0].GetString()!;
        foreach (var file in Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(files, Path.GetRelativePath(root, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        File.AppendAllText(Path.Combine(files, "floor", "floor.css"), ".of-the-next-version { color: inherit; }\n");
        updated = Path.Combine(dataFolder, "updated.json");
        File.WriteAllText(updated, manifest.Replace(JsonEncodedText.Encode(root).ToString(), files, StringComparison.Ordinal));
    }

    private async Task ReadOnAsync(StreamReader console)
    {
        while (await console.ReadLineAsync() is { } line)
        {
            if (SetUpCode().Match(line) is { Success: true } match) code.TrySetResult(match.Groups["code"].Value);
        }
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

    // Beside the tests' own output: artifacts/bin/PROJECT/CONFIGURATION.
    private static string Program
    {
        get
        {
            var own = new DirectoryInfo(AppContext.BaseDirectory);
            return Path.Combine(own.Parent!.Parent!.FullName, "WearWatch.Dashboard", own.Name);
        }
    }

    [GeneratedRegex("Now listening on: (?<address>http://[^ ]+)")]
    private static partial Regex Listening();

    [GeneratedRegex("with the code (?<code>[A-Z0-9-]+)")]
    private static partial Regex SetUpCode();
}
