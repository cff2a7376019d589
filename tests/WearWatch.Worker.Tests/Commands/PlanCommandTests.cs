using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using WearWatch.Plant.Planning;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Worker.Commands;
using WearWatch.Worker.Tests.Planning;

namespace WearWatch.Worker.Tests.Commands;

/// <summary>The swap plan at the command line, on a data folder.</summary>
public sealed class PlanCommandTests : IAsyncLifetime
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wear-plan");

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private string File => Path.Combine(folder.FullName, "plan.json");

    public async ValueTask InitializeAsync()
    {
        var builder = Host.CreateEmptyApplicationBuilder(new HostApplicationBuilderSettings());
        builder.Configuration.AddInMemoryCollection([new("WearWatch:DataFolder", folder.FullName)]);
        builder.Services.AddWearWatch(builder.Configuration);
        using var host = builder.Build();
        await host.Services.GetRequiredService<WearStore>().PrepareAsync(Ct);
        await using var db = await host.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        await MillRows.AddAsync(db, host.Services.GetRequiredService<PlanInputs>(), TimeProvider.System.GetUtcNow(), Ct);
    }

    public ValueTask DisposeAsync()
    {
        folder.Delete(recursive: true);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task What_is_proposed_can_be_saved_and_is_shown_then_and_saved_again_changes_nothing()
    {
        var (code, proposal, _) = await RunAsync("propose", "--json");
        Assert.Equal(ExitCode.Done, code);
        await System.IO.File.WriteAllTextAsync(File, proposal, Ct);
        Assert.Equal((ExitCode.Done, "4 decisions changed"), Told(await RunAsync("save", File, "--by", "day shift")));
        Assert.Equal((ExitCode.Done, "0 decisions changed"), Told(await RunAsync("save", File)));

        var shown = Read((await RunAsync("show", "--json")).Output);
        Assert.Equal(
            Read(proposal).Swaps.Select(s => (s.Chain, s.Shutdown)), shown.Swaps.Select(s => (s.Chain, s.Shutdown)));
        Assert.All(shown.Swaps, s => Assert.NotNull(s.Shutdown));
        Assert.All(shown.Swaps, s => Assert.Equal((s.Chain, true), (s.Kit.Chain, s.Kit.CutPitches > 0)));
        Assert.Equal(4, shown.Revision);
    }

    [Fact]
    public async Task The_plan_is_shown_in_words_too()
    {
        var (code, output, error) = await RunAsync("show");
        Assert.Equal((ExitCode.Done, ""), (code, error));
        Assert.Contains(": 4 chains, 26 shutdowns", output, StringComparison.Ordinal);
        Assert.Contains("  not in the horizon Debarking, D-1: risk of passing its limit", output, StringComparison.Ordinal);
        // D-2 has 81 pitches: an offset link beside the connecting one.
        Assert.Contains("      cut 79 pitches, connecting links 1, offset links 1", output, StringComparison.Ordinal);
        Assert.Contains("Expected cost", output, StringComparison.Ordinal);
        Assert.Contains("chain left: D-1.", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_only_supposed_is_marked_and_cannot_be_saved()
    {
        Assert.Contains(
            "What if: this is not the real plan", (await RunAsync("propose", "--weeks", "10")).Output, StringComparison.Ordinal);
        await System.IO.File.WriteAllTextAsync(File, (await RunAsync("propose", "--crew-percent", "60", "--json")).Output, Ct);
        var (code, output, error) = await RunAsync("save", File);
        Assert.Equal((ExitCode.Refused, ""), (code, output));
        Assert.StartsWith("plan.json: what_if: ", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--weeks", "200", "--weeks: Plan 1 to 104 weeks ahead.")]
    [InlineData("--shutdown", "Christmas", "--shutdown: No shutdown 'Christmas' is planned within the horizon.")]
    public async Task A_proposal_that_cannot_be_made_gives_1_and_names_the_option(string option, string value, string reason)
    {
        var (code, output, error) = await RunAsync("propose", option, value);
        Assert.Equal((ExitCode.Refused, "", reason), (code, output, error.Trim()));
    }

    [Theory]
    [InlineData("{\n\"revision\": 0,\n\"swaps\": [{\"chain\": 7}]}", "plan.json:3: $.swaps[0].chain: ")]
    [InlineData("null", "plan.json:1: ")]
    [InlineData("{\"swaps\": []}", "plan.json: revision: ")]
    [InlineData("{\"revision\": 0, \"swaps\": [{\"chain\": \"D-9\"}]}", "plan.json: swaps[0].chain: ")]
    [InlineData("{\"revision\": 9, \"swaps\": [{\"chain\": \"D-1\"}]}", "plan.json: revision: The plan was")]
    public async Task A_file_that_holds_no_plan_to_keep_gives_1_and_says_where(string text, string where)
    {
        await System.IO.File.WriteAllTextAsync(File, text, Ct);
        var (code, output, error) = await RunAsync("save", File);
        Assert.Equal((ExitCode.Refused, ""), (code, output));
        Assert.StartsWith(where, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("plan save")]
    [InlineData("plan save /no/such/plan.json")]
    [InlineData("plan propose --weeks soon")]
    public async Task What_is_not_understood_gives_2(string line) =>
        Assert.Equal(ExitCode.WrongUsage, (await CommandLineTests.RunAsync(line)).Code);

    private Task<(int Code, string Output, string Error)> RunAsync(params string[] words) =>
        CommandLineTests.RunAsync(["plan", .. words, "--data", folder.FullName]);

    private static (int Code, string Output) Told((int Code, string Output, string Error) told) =>
        (told.Code, told.Output.Trim());

    private static PlanJson Read(string json) => JsonSerializer.Deserialize(json, PlanningJson.Default.PlanJson)!;
}
