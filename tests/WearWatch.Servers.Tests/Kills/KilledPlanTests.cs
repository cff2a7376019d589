using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;
using WearWatch.Worker;
using WearWatch.Worker.Tests.Planning;

namespace WearWatch.Servers.Tests.Kills;

/// <summary>The keeping of a swap plan is killed in its midst.</summary>
[Collection(nameof(OneAtATime))]
public sealed class KilledPlanTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory(Explicit = true)]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_plan_whose_keeping_was_killed_is_kept_whole_or_not_at_all(bool onPostgres)
    {
        await using var program = await KilledProgram.OnAsync(onPostgres);
        await program.RunAsync("backup", program.At("backups")); // makes the tables
        await FillMillAsync(program);
        var proposed = await program.RunAsync("plan", "propose", "--json");
        var before = "round 0";
        await new KillMoments(program).KillAsync(
            async () => await program.RunAsync("plan", "save", await WriteAsync(0)),
            async round => ["plan", "save", await WriteAsync(round)],
            async (round, output) =>
            {
                await using var db = program.Db();
                var standing = await db.Swaps.Where(s => s.Outcome == SwapEnd.Planned).ToListAsync(Ct);
                Assert.Equal(4, standing.Select(s => s.ChainId).Distinct().Count());
                Assert.Equal(4, standing.Count);
                var note = Assert.Single(standing.Select(s => s.Note).Distinct());
                Assert.Contains(note, new[] { before, $"round {round}" });
                if (output.Contains("4 decisions changed", StringComparison.Ordinal)) Assert.Equal($"round {round}", note);
                before = note;
            });

        async Task<string> WriteAsync(int round)
        {
            var plan = JsonNode.Parse(round == 0 ? proposed : await program.RunAsync("plan", "show", "--json"))!;
            foreach (var swap in plan["swaps"]!.AsArray()) swap!["note"] = $"round {round}";
            var path = program.At("plan.json");
            await File.WriteAllTextAsync(path, plan.ToJsonString(), Ct);
            return path;
        }
    }

    private static async Task FillMillAsync(KilledProgram program)
    {
        var builder = Host.CreateEmptyApplicationBuilder(new HostApplicationBuilderSettings());
        builder.Configuration.AddInMemoryCollection(program.Settings);
        builder.Services.AddWearWatch(builder.Configuration);
        using var host = builder.Build();
        await using var db = program.Db();
        await MillRows.AddAsync(db, host.Services.GetRequiredService<PlanInputs>(), TimeProvider.System.GetUtcNow(), Ct);
    }
}
