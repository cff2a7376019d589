using System.CommandLine;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch plan packages</c>: the work packages of the saved plan, for another system.</summary>
internal static class PlanPackageCommand
{
    public static Command Make(Screen screen)
    {
        var data = Shared.Data();
        var command = new Command("packages", "Writes the work packages of the saved plan as JSON, each swap with its stable id.")
        {
            data,
        };
        command.SetAction(async (parsed, ct) =>
        {
            using var host = await PlanCommand.OpenAsync(parsed.GetRequiredValue(data), ct);
            var kept = await host.Services.GetRequiredService<KeptPlan>().AskAsync(ct);
            screen.Output.WriteLine(
                JsonSerializer.Serialize(kept.Packages(), PlanningJson.Default.IReadOnlyListStopPackageJson));
            return ExitCode.Done;
        });
        return command.WithExamples("wearwatch plan packages --data /srv/wearwatch > packages.json");
    }
}
