using System.CommandLine;
using System.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Planning.Plans;
using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch plan propose</c>: the plan of least expected cost; nothing is kept.</summary>
internal static class PlanProposeCommand
{
    public static Command Make(Screen screen)
    {
        var weeks = Whole("weeks", "How far to plan ahead, 1 to 104 weeks, in place of what the plant has set.");
        var crew = Whole("crew-percent", "Crew hours in percent of those planned, 0 to 500.");
        var late = Whole("deliveries-late-days", "Days by which everything on order comes later, 0 to 365.");
        var shutdown = new Option<string?>("--shutdown") { Description = "The id of a shutdown that is moved." };
        var days = Whole("shutdown-days", "Days by which it is moved, at most 365; negative for earlier.");
        var (data, json) = (Shared.Data(), Shared.Json());
        var command = new Command(
            "propose",
            "Proposes the plan of least expected cost. Nothing is saved; what an option supposes is only shown.")
        {
            weeks, crew, late, shutdown, days, data, json,
        };
        command.SetAction((parsed, ct) =>
        {
            var asked = new WhatIfJson(
                parsed.GetValue(weeks), parsed.GetValue(crew), parsed.GetValue(late), parsed.GetValue(shutdown),
                parsed.GetValue(days));
            return RunAsync(asked.ToWhatIf(), parsed.GetRequiredValue(data), parsed.GetValue(json), screen, ct);
        });
        return command.WithExamples(
            "wearwatch plan propose --json > plan.json", "wearwatch plan propose --weeks 52 --crew-percent 60");
    }

    private static async Task<int> RunAsync(WhatIf whatIf, DirectoryInfo data, bool asJson, Screen screen, CancellationToken ct)
    {
        using var host = await PlanCommand.OpenAsync(data, ct);
        var desk = host.Services.GetRequiredService<PlanDesk>();
        var answer = await screen.WithProgressAsync("Planning", p => desk.ProposeAsync(whatIf, new Stages(p), ct));
        if (answer is PlanAnswer.Refused refused)
            return PlanCommand.Refuse(screen, refused.Refusals.Select(r => r with { Field = "--" + r.Field.Replace('_', '-') }));
        PlanCommand.Tell(screen, ((PlanAnswer.Planned)answer).Draft, asJson);
        return ExitCode.Done;
    }

    private static Option<int?> Whole(string name, string description) => new("--" + name) { Description = description };

    /// <summary>How far each stage is from the whole, by the time that it usually takes.</summary>
    private sealed class Stages(IProgress<double> share) : IProgress<PlanStage>
    {
        public void Report(PlanStage value) => share.Report(value switch
        {
            PlanStage.Costing => 0.05,
            PlanStage.Searching => 0.2,
            PlanStage.Proving => 0.5,
            _ => throw new UnreachableException(),
        });
    }
}
