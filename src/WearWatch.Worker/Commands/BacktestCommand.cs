using System.CommandLine;
using CsvHelper;
using WearWatch.Plant.Files;
using WearWatch.Plant.Folders;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch backtest</c>: what would have been forecast then.</summary>
internal static class BacktestCommand
{
    private static readonly string[] Header = ["id", "remaining_h_p05", "remaining_h_p50", "remaining_h_p95"];

    public static Command Make(Screen screen)
    {
        var folder = Shared.Folder("A folder with chains.csv, readings.csv and, if there is one, events.csv.");
        var questions = new Option<FileInfo>("--questions")
        {
            Description = "A CSV file with id, chain, limit_pct, readings_known.",
            Required = true,
        }.AcceptExistingOnly();
        var to = Shared.Out("The CSV file to write: id and running hours left from the last known reading at 5, 50 and 95 %; "
            + "empty for no upper limit yet.");
        var command = new Command(
            "backtest",
            "Shows what would have been forecast when only a chain's first readings were known. Nothing later is looked at; "
            + "the fleet "
                + "model learns from the other chains.")
        {
            folder, questions, to,
        };
        command.SetAction((parsed, ct) => RunAsync(
            parsed.GetRequiredValue(folder), parsed.GetRequiredValue(questions), parsed.GetRequiredValue(to), screen, ct));
        return command.WithExamples("wearwatch backtest ./plant-files --questions questions.csv --out answers.csv");
    }

    private static async Task<int> RunAsync(
        DirectoryInfo directory, FileInfo questionFile, FileInfo to, Screen screen, CancellationToken ct)
    {
        var folder = FleetFolder.Read(directory.FullName, TimeProvider.System.GetUtcNow());
        var questions = Question.Read(questionFile.FullName, folder, out var remarks);
        screen.Write([.. folder.Remarks, .. remarks]);
        var forecasts = await Shared.LearnAsync(folder, screen, ct);
        var answers = await screen.WithProgressAsync("Answering", p => forecasts.AnswerAsync(questions, p, ct));
        using (var writer = CsvWriter.Create(to.Create(), new CsvWriterOptions { NewLine = "\n" }))
        {
            writer.WriteRecord(Header);
            foreach (var (question, answer) in questions.Zip(answers))
                writer.WriteRecord([question.Id, RowFields.Text(answer.EarlyHours), RowFields.Text(answer.MiddleHours),
                    RowFields.Text(answer.LateHours)]);
        }

        screen.WriteCautions(folder.Chains.Select(c => c.Card));
        return folder.HasRefusals || remarks.Count > 0 ? ExitCode.Refused : ExitCode.Done;
    }
}
