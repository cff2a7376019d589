using System.CommandLine;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch plan show</c>: the saved plan.</summary>
internal static class PlanShowCommand
{
    public static Command Make(Screen screen)
    {
        var (data, json) = (Shared.Data(), Shared.Json());
        var command = new Command("show", "Shows the saved plan, its conflicts, and what must be ordered.")
        {
            data, json,
        };
        command.SetAction(async (parsed, ct) =>
        {
            using var host = await PlanCommand.OpenAsync(parsed.GetRequiredValue(data), ct);
            var kept = await host.Services.GetRequiredService<PlanDesk>().ShowAsync(ct);
            PlanCommand.Tell(screen, kept, parsed.GetValue(json));
            return ExitCode.Done;
        });
        return command.WithExamples("wearwatch plan show", "wearwatch plan show --data /srv/wearwatch --json");
    }
}
