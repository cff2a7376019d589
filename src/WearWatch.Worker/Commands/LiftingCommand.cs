using System.CommandLine;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Chains;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch lifting</c>: the chains that lift, worst first, with what stands against their use.</summary>
internal static class LiftingCommand
{
    public static Command Make(Screen screen)
    {
        var data = Shared.Data();
        var command = new Command("lifting", "Lists the chains that lift, worst first, with what stands against their use.")
        {
            data,
        };
        command.SetAction(async (parsed, ct) =>
        {
            using var host = await PlanCommand.OpenAsync(parsed.GetRequiredValue(data), ct);
            var time = await host.Services.GetRequiredService<PlantClock>().NowAsync(ct);
            await using var db = await host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(ct);
            var rows = await (
                from state in db.LiftingStates.AsNoTracking()
                join chain in db.Chains on state.ChainId equals chain.Id
                select new { Chain = chain, State = state }).ToListAsync(ct);
            foreach (var (chain, state) in rows.Select(r => (r.Chain, r.State.ToState()))
                .OrderByDescending(r => r.Item2.VerdictOn(time.Today)).ThenBy(r => r.Item2.ExaminationDue ?? DateOnly.MinValue)
                .ThenBy(r => r.Chain.Name, StringComparer.Ordinal))
            {
                var due = state.ExaminationDue?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "no date";
                screen.Output.WriteLine(
                    $"{chain.Name}: {LiftingVerdicts.Words(state.VerdictOn(time.Today))}. Thorough examination due: {due}.");
                foreach (var fault in state.On(time.Today)) screen.Output.WriteLine("  " + fault.Words);
            }

            screen.Output.WriteLine(rows.Count == 0 ? "No chain lifts or holds a load." : Caution.WhoDecides);
            return ExitCode.Done;
        });
        return command.WithExamples("wearwatch lifting", "wearwatch lifting --data /srv/wearwatch");
    }
}
