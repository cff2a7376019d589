using System.CommandLine;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Safekeeping;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch backup</c>: all that the plant has in its memory, in one file, while everything runs.</summary>
internal static class BackupCommand
{
    public static Command Make(Screen screen)
    {
        var folder = new Argument<DirectoryInfo>("DIR")
        {
            Description =
            "The folder to write the backup into; made if it is not there."
        };
        var keep = new Option<int?>("--keep")
        {
            Description =
            "How many backups are kept in the folder, the newest; all if left out."
        };
        keep.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int?>() is < 1) result.AddError("--keep takes a whole number from 1 on.");
        });
        var data = Shared.Data();
        var command = new Command("backup", "Writes everything into one file and checks it, while the other programs run.")
        {
            folder, keep, data,
        };
        command.SetAction((parsed, ct) => RunAsync(
            parsed.GetRequiredValue(folder), parsed.GetValue(keep), parsed.GetRequiredValue(data), screen, ct));
        return command.WithExamples("wearwatch backup /var/backups/wearwatch --keep 14 --data ./data");
    }

    private static async Task<int> RunAsync(
        DirectoryInfo folder, int? keep, DirectoryInfo data, Screen screen, CancellationToken ct)
    {
        using var host = Shared.Host(data);
        await host.Services.GetRequiredService<WearStore>().PrepareAsync(ct);
        var made = await host.Services.GetRequiredService<Backups>().BackUpAsync(folder.FullName, keep, ct);
        await screen.Output.WriteLineAsync($"{made.Path}: {made.Rows.Values.Sum()} rows of {made.Rows.Count} tables, checked");
        return ExitCode.Done;
    }
}
