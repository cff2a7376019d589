using System.CommandLine;
using WearWatch.Storage.Series.Boards;
using WearWatch.Worker.Watching.Boards;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch boards</c>: ready-made boards over the time series, and over the program's own figures.</summary>
internal static class BoardsCommand
{
    public static Command Make(Screen screen)
    {
        var folder =
            new Argument<DirectoryInfo>("DIR") { Description = "The folder to write them into; made if it is not there." };
        var command =
            new Command("boards", "Writes ready-made boards over telemetry and the program itself for Grafana, and alert rules.")
        {
            folder,
        };
        command.SetAction(async (parsed, ct) =>
        {
            var target = parsed.GetRequiredValue(folder);
            target.Create();
            foreach (var (name, board) in SeriesBoard.Files.Concat(WatchBoard.Files))
            {
                await File.WriteAllTextAsync(Path.Combine(target.FullName, name), board, ct);
                await screen.Output.WriteLineAsync(Path.Combine(target.ToString(), name));
            }

            return ExitCode.Done;
        });
        return command.WithExamples("wearwatch boards ./boards");
    }
}
