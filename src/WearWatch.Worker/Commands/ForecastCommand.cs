using System.CommandLine;
using CsvHelper;
using WearWatch.Plant.Files;
using WearWatch.Plant.Folders;
using WearWatch.Wear;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch forecast</c>: a forecast for every chain of a folder, without a database.</summary>
internal static class ForecastCommand
{
    private static readonly string[] Header =
        ["chain", "elongation_pct", "rate_pct_per_1000h", "limit_pct", "counter_h_now", "remaining_h_p05", "remaining_h_p50",
            "remaining_h_p95", "condition"];

    public static Command Make(Screen screen)
    {
        var folder = Shared.Folder("A folder with chains.csv, readings.csv and, if there is one, events.csv.");
        var to = Shared.Out("The CSV file to write; an empty remaining_h_p95 means no upper limit yet.");
        var command = new Command("forecast", "Forecasts every chain of a folder as of its last reading.") { folder, to };
        command.SetAction((parsed, ct) => RunAsync(parsed.GetRequiredValue(folder), parsed.GetRequiredValue(to), screen, ct));
        return command.WithExamples("wearwatch forecast ./plant-files --out forecasts.csv");
    }

    private static async Task<int> RunAsync(DirectoryInfo directory, FileInfo to, Screen screen, CancellationToken ct)
    {
        var folder = FleetFolder.Read(directory.FullName, TimeProvider.System.GetUtcNow());
        screen.Write(folder.Remarks);
        var forecasts = await Shared.LearnAsync(folder, screen, ct);
        var made = await screen.WithProgressAsync("Forecasting", p => forecasts.MakeAsync(folder.Chains, p, ct));
        using (var writer = CsvWriter.Create(to.Create(), new CsvWriterOptions { NewLine = "\n" }))
        {
            writer.WriteRecord(Header);
            foreach (var (chain, assessment) in folder.Chains.Zip(made)) writer.WriteRecord(Row(chain, assessment));
        }

        screen.WriteCautions(folder.Chains.Select(c => c.Card));
        return folder.HasRefusals ? ExitCode.Refused : ExitCode.Done;
    }

    private static string[] Row(FolderChain chain, Assessment assessment) =>
    [
        chain.Card.Name,
        RowFields.Text(assessment.ElongationPercent),
        RowFields.Text(assessment.RatePercentPer1000Hours),
        RowFields.Text(assessment.Limit.Percent),
        RowFields.Text(chain.Readings.LastOrDefault(r => r.Counter is not null)?.Counter?.Hours),
        RowFields.Text(assessment.Forecast.EarlyHours),
        RowFields.Text(assessment.Forecast.MiddleHours),
        RowFields.Text(assessment.Forecast.LateHours),
        assessment.ShownCondition.Words.ToString(),
    ];
}
