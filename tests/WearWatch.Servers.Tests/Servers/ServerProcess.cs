using System.Diagnostics;

namespace WearWatch.Servers.Tests.Servers;

/// <summary>
/// A real server that a test starts, kills with no chance to tidy up, and starts again on the same data and port.
/// </summary>
/// <param name="name">For messages.</param>
/// <param name="command">The program and its words.</param>
/// <param name="isReady">Whether it answers.</param>
internal sealed class ServerProcess(string name, IReadOnlyList<string> command, Func<CancellationToken, Task<bool>> isReady)
    : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private Process? process;

    /// <summary>What it said last.</summary>
    public string LastWords { get; private set; } = "";

    /// <summary>Starts it and waits until it answers.</summary>
    /// <exception cref="InvalidOperationException">It is not installed, ended at once or does not answer.</exception>
    public async Task StartAsync(CancellationToken ct = default)
    {
        var start = new ProcessStartInfo(command[0], command.Skip(1))
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        try
        {
            process = Process.Start(start)!;
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            throw new InvalidOperationException($"{name} cannot be started: {missing.Message}. tests/run installs it.", missing);
        }

        process.OutputDataReceived += (_, line) => LastWords = line.Data ?? LastWords;
        process.ErrorDataReceived += (_, line) => LastWords = line.Data ?? LastWords;
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        var since = Stopwatch.StartNew();
        while (!await isReady(ct))
        {
            if (process.HasExited || since.Elapsed > Patience)
                throw new InvalidOperationException(
                    $"{name} does not answer{(process.HasExited ? $", it ended with {process.ExitCode}" : "")}: {LastWords}");
            await Task.Delay(50, ct);
        }
    }

    /// <summary>Ends it as a power cut would: signal 9.</summary>
    public async Task KillAsync(CancellationToken ct = default)
    {
        if (process is null) return;
        if (!process.HasExited) process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync(ct);
        process.Dispose();
        process = null;
    }

    public async ValueTask DisposeAsync() => await KillAsync();
}
