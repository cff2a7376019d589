using System.CommandLine;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Storage.Safekeeping;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch restore</c>: a backup brought back into an empty place.</summary>
internal static class RestoreCommand
{
    public static Command Make(Screen screen)
    {
        var file = new Argument<FileInfo>("FILE") { Description = "The backup." };
        var data = Shared.Data();
        var command = new Command("restore", "Brings a backup back into an empty data folder, and counts that all is there.")
        {
            file, data,
        };
        command.SetAction((parsed, ct) => RunAsync(parsed.GetRequiredValue(file), parsed.GetRequiredValue(data), screen, ct));
        return command.WithExamples("wearwatch restore /var/backups/wearwatch/wearwatch-20271231-235959.db --data ./restored");
    }

    private static async Task<int> RunAsync(FileInfo file, DirectoryInfo data, Screen screen, CancellationToken ct)
    {
        using var host = Shared.Host(data);
        var restored = await host.Services.GetRequiredService<Restoration>().RestoreAsync(file.FullName, ct);
        await screen.Output.WriteLineAsync(
            $"{restored.Rows.Values.Sum()} rows of {restored.Rows.Count} tables restored into {restored.Path}");
        return ExitCode.Done;
    }
}
