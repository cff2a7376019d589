using System.CommandLine;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Storage.Engines;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch import</c>: files into the plant's memory.</summary>
internal static class ImportCommand
{
    private const string Maker = "command line";
    private static readonly string[] Names = ["chains.csv", "events.csv", "readings.csv"];

    public static Command Make(Screen screen)
    {
        var paths = new Argument<FileSystemInfo[]>("PATH")
        {
            Description = "A folder with chains.csv, events.csv and readings.csv (or some of them), or single files.",
            Arity = ArgumentArity.OneOrMore,
        }.AcceptExistingOnly();
        var data = Shared.Data();
        var json = Shared.Json();
        var command =
            new Command("import", "Takes files of chains, readings and events in. Rows that are known already change nothing.")
        {
            paths, data, json,
        };
        command.SetAction((parsed, ct) =>
            RunAsync(parsed.GetRequiredValue(paths), parsed.GetRequiredValue(data), parsed.GetValue(json), screen, ct));
        return command.WithExamples(
            "wearwatch import ./plant-files", "wearwatch import march/readings.csv --data /srv/wearwatch --json");
    }

    private static async Task<int> RunAsync(
        FileSystemInfo[] paths, DirectoryInfo data, bool asJson, Screen screen, CancellationToken ct)
    {
        var files = paths.SelectMany(FilesOf).ToList();
        if (files.Count == 0)
        {
            await screen.Error.WriteLineAsync($"{paths[0].Name}:0: The folder holds none of {string.Join(", ", Names)}.");
            return ExitCode.Refused;
        }

        using var host = Shared.Host(data);
        await host.Services.GetRequiredService<WearStore>().PrepareAsync(ct);
        var import = host.Services.GetRequiredService<FileImport>();
        var report =
            await screen.WithProgressAsync("Importing", p => import.ImportAsync(files, new ShareOfAll(files.Count, p), ct));
        return Tell(screen, report, asJson);
    }

    /// <summary>Writes what became of the files.</summary>
    public static int Tell(Screen screen, ImportReport report, bool asJson)
    {
        foreach (var file in report.Files)
        {
            screen.Write(file.Remarks);
            if (file.RemarkCount > file.Remarks.Count)
                screen.Error.WriteLine($"{file.Name}: ... and {file.RemarkCount - file.Remarks.Count} more remarks");
        }

        if (asJson)
        {
            screen.Output.WriteLine(JsonSerializer.Serialize(
                [.. report.Files
                    .Select(f =>
                        new FileTakenInJson(f.Name, FileWords.Of(f.Kind), f.Taken, f.AlreadyKnown, f.Waiting, f.Refused))],
                CommandJson.Default.FileTakenInJsonArray));
        }
        else
        {
            foreach (var f in report.Files)
                screen.Output.WriteLine($"{f.Name}: {f.Taken} new, {f.AlreadyKnown} already known, {f.Waiting} waiting for a "
                    + $"person, {f.Refused} refused");
        }

        return report.Refused > 0 ? ExitCode.Refused : ExitCode.Done;
    }

    private static IEnumerable<ImportFile> FilesOf(FileSystemInfo path) => path is DirectoryInfo
        ? Names.Select(n => Path.Combine(path.FullName, n)).Where(File.Exists).Select(path => ImportFile.OnDisk(path, Maker))
        : [ImportFile.OnDisk(path.FullName, Maker)];

    /// <summary>The share of all files that has been read, each counted alike.</summary>
    internal sealed class ShareOfAll(int files, IProgress<double> all) : IProgress<ImportProgress>
    {
        private readonly HashSet<string> begun = [];

        public void Report(ImportProgress value)
        {
            begun.Add(value.File);
            all.Report((begun.Count - 1 + value.Share) / files);
        }
    }
}
