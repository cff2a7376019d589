using System.CommandLine;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Safekeeping;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch verify</c>: whether a memory or a backup is whole.</summary>
internal static class VerifyCommand
{
    public static Command Make(Screen screen)
    {
        var file = new Argument<FileInfo?>("FILE")
        {
            Description = "A backup; the data folder's own memory if left out.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var data = Shared.Data();
        var command = new Command("verify", "Checks that the memory or a backup is whole, page by page and row by row.")
        {
            file, data,
        };
        command.SetAction((parsed, ct) => RunAsync(parsed.GetValue(file), parsed.GetRequiredValue(data), screen, ct));
        return command.WithExamples("wearwatch verify --data ./data", "wearwatch verify wearwatch-20271231-235959.db");
    }

    private static async Task<int> RunAsync(FileInfo? file, DirectoryInfo data, Screen screen, CancellationToken ct)
    {
        if (file is { Exists: false }) throw new IOException($"There is no file {file.FullName}.");
        using var host = Shared.Host(data);
        var found = file is null
            ? await Check.MemoryAsync(host.Services.GetRequiredService<WearStore>(), ct)
            : await Check.FileAsync(file.FullName, ct);
        foreach (var fault in found.Faults) await screen.Error.WriteLineAsync(fault);
        if (found.Faults.Count > 0) return ExitCode.Refused;
        await screen.Output.WriteLineAsync($"{found.Path} is whole: {found.Rows.Values.Sum()} rows of {found.Rows.Count} tables");
        return ExitCode.Done;
    }
}
