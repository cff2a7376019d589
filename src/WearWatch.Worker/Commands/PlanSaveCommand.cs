using System.CommandLine;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch plan save</c>: keeps a plan that was proposed or written.</summary>
internal static class PlanSaveCommand
{
    public static Command Make(Screen screen)
    {
        var file = new Argument<FileInfo>("FILE")
        {
            Description = "A plan as plan propose --json and plan show --json write it; swaps left out stay as they are.",
        }.AcceptExistingOnly();
        var by = new Option<string>("--by")
        {
            Description = "Who decides so; the person who is signed in to this computer if left out.",
            DefaultValueFactory = _ => Environment.UserName,
        };
        var (data, json) = (Shared.Data(), Shared.Json());
        var command = new Command("save", "Keeps a plan, all of it or nothing. The same file twice changes nothing.")
        {
            file, by, data, json,
        };
        command.SetAction(async (parsed, ct) =>
        {
            var from = parsed.GetRequiredValue(file);
            if (await ReadAsync(from, screen, ct) is not { } told) return ExitCode.Refused;
            using var host = await PlanCommand.OpenAsync(parsed.GetRequiredValue(data), ct);
            var who = told.By is { Length: > 0 } named ? named : parsed.GetRequiredValue(by);
            var answer = await host.Services.GetRequiredService<PlanDesk>().SaveAsync(told, who, ct);
            return Tell(screen, from.Name, answer, parsed.GetValue(json));
        });
        return command.WithExamples("wearwatch plan save plan.json --by \"day shift\" --data /srv/wearwatch");
    }

    private static async Task<PlanEntryJson?> ReadAsync(FileInfo file, Screen screen, CancellationToken ct)
    {
        try
        {
            await using var text = file.OpenRead();
            if (await JsonSerializer.DeserializeAsync(text, PlanningJson.Default.PlanEntryJson, ct) is { } told)
                return told;
            await screen.Error.WriteLineAsync($"{file.Name}:1: It holds no plan.");
        }
        catch (JsonException wrong)
        {
            var line = (wrong.LineNumber ?? 0) + 1;
            await screen.Error.WriteLineAsync($"{file.Name}:{line}: {wrong.Path ?? "$"}: It is not such JSON.");
        }

        return null;
    }

    private static int Tell(Screen screen, string file, PlanAnswer answer, bool asJson)
    {
        if (answer is PlanAnswer.Refused refused) return PlanCommand.Refuse(screen, refused.Refusals, file + ": ");
        if (answer is not PlanAnswer.Planned kept)
        {
            screen.Error.WriteLine($"{file}: revision: The plan was changed in the meantime: propose again. Nothing was kept.");
            return ExitCode.Refused;
        }

        if (asJson) PlanCommand.Tell(screen, kept.Draft, asJson);
        else screen.Output.WriteLine(kept.Changed == 1 ? "1 decision changed" : $"{kept.Changed} decisions changed");
        return ExitCode.Done;
    }
}
