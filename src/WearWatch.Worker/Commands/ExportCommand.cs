using System.CommandLine;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Intake;
using WearWatch.Storage.Engines;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch export</c>: the plant's memory as files.</summary>
internal static class ExportCommand
{
    public static Command Make(Screen screen)
    {
        var folder = new Argument<DirectoryInfo>("DIR")
        {
            Description = "The folder to write chains.csv, readings.csv and events.csv into; made if it is not there.",
        };
        var data = Shared.Data();
        var command =
            new Command("export", "Writes the register, the readings and the events as files that import takes in again.")
        {
            folder, data,
        };
        command.SetAction((parsed, ct) => RunAsync(parsed.GetRequiredValue(folder), parsed.GetRequiredValue(data), screen, ct));
        return command.WithExamples("wearwatch export ./backup --data ./data");
    }

    private static async Task<int> RunAsync(DirectoryInfo folder, DirectoryInfo data, Screen screen, CancellationToken ct)
    {
        using var host = Shared.Host(data);
        await host.Services.GetRequiredService<WearStore>().PrepareAsync(ct);
        var (chains, readings, events) = await host.Services.GetRequiredService<FileExport>().WriteAsync(folder.FullName, ct);
        await screen.Output.WriteLineAsync($"{chains} chains, {readings} readings, {events} events written to {folder.FullName}");
        return ExitCode.Done;
    }
}
