using System.Diagnostics;

namespace WearWatch.Servers.Tests;

/// <summary>A worker in a process of its own: <c>wearwatch serve</c>, or another command.</summary>
internal sealed class ServeProcess : IAsyncDisposable
{
    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("wear-worker");
    private readonly Process process;
    private readonly List<string> said = [];

    private ServeProcess(string program, IReadOnlyList<string> words, IEnumerable<(string Key, string Value)> settings)
    {
        var start = new ProcessStartInfo("dotnet", [program, .. words])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = data.FullName,
        };
        start.Environment["WearWatch__DataFolder"] = data.FullName;
        foreach (var (key, value) in settings) start.Environment[key.Replace(":", "__", StringComparison.Ordinal)] = value;
        process = Process.Start(start)!;
        process.OutputDataReceived += (_, line) => Hear(line.Data);
        process.ErrorDataReceived += (_, line) => Hear(line.Data);
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
    }

    public int Id => process.Id;

    public bool HasEnded => process.HasExited;

    /// <summary>All that it wrote so far.</summary>
    public string Said
    {
        get
        {
            lock (said) return string.Join('\n', said);
        }
    }

    /// <summary>Starts <c>wearwatch serve</c> with settings of the section <c>WearWatch</c>.</summary>
    public static ServeProcess Serve(params (string Key, string Value)[] settings) => new(
        Path.Combine(AppContext.BaseDirectory, "WearWatch.Worker.dll"), ["serve"],
        settings.Select(s => ($"WearWatch:{s.Key}", s.Value)));

    /// <summary>Ends it with no chance to tidy up: signal 9.</summary>
    public async Task KillAsync()
    {
        if (!process.HasExited) process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await KillAsync();
        process.Dispose();
        data.Delete(recursive: true);
    }

    private void Hear(string? line)
    {
        if (line is null) return;
        lock (said) said.Add(line);
    }
}
