using System.CommandLine;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using WearWatch.Plant.Planning;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Engines;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch plan</c>: which chain is swapped in which shutdown.</summary>
internal static class PlanCommand
{
    public static Command Make(Screen screen) =>
        new Command("plan", "Plans which chain is swapped in which shutdown, from the plant's memory.")
        {
            PlanProposeCommand.Make(screen),
            PlanShowCommand.Make(screen),
            PlanSaveCommand.Make(screen),
            PlanPackageCommand.Make(screen),
        }.WithExamples(
            "wearwatch plan show --data ./data",
            "wearwatch plan propose --json > plan.json",
            "wearwatch plan save plan.json --by \"day shift\"");

    /// <summary>A host on the plant's memory, made ready.</summary>
    public static async Task<IHost> OpenAsync(DirectoryInfo data, CancellationToken ct)
    {
        var host = Shared.Host(data);
        await host.Services.GetRequiredService<WearStore>().PrepareAsync(ct);
        return host;
    }

    /// <summary>Writes a plan for a person or for a program.</summary>
    public static void Tell(Screen screen, PlanDraft draft, bool asJson)
    {
        if (asJson) screen.Output.WriteLine(JsonSerializer.Serialize(PlanJson.Of(draft), PlanningJson.Default.PlanJson));
        else PlanText.Write(screen.Output, draft);
    }

    /// <summary>Writes why a plan was refused.</summary>
    public static int Refuse(Screen screen, IEnumerable<Refusal> refusals, string before = "")
    {
        foreach (var refusal in refusals) screen.Error.WriteLine($"{before}{refusal.Field}: {refusal.Reason}");
        return ExitCode.Refused;
    }
}
