using System.Globalization;
using Microsoft.EntityFrameworkCore;
using A = WearWatch.Worker.Tests.A;

namespace WearWatch.Servers.Tests.Kills;

/// <summary>The worker is killed again and again while files come into its inbox.</summary>
[Collection(nameof(OneAtATime))]
public sealed class KilledInboxTests
{
    private const int Seed = 22;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory(Explicit = true)]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_file_of_the_inbox_that_was_put_away_is_in_the_memory_once(bool onPostgres)
    {
        await using var program = await KilledProgram.OnAsync(onPostgres);
        await program.DropAsync("chains.csv", "chain,pitch_mm\nC1,25.4\n");
        var (chance, dropped) = (new Random(Seed), 0);
        for (var kill = 1; kill <= KillMoments.Each; kill++)
        {
            using var serving = program.Start("serve");
            var enough = program.PutAway().Count + 3;
            while (program.PutAway().Count < enough) await DropAsync();
            for (var more = chance.Next(12); more > 0; more--) await DropAsync();
            await CheckAsync(program, serving);
        }

        using var last = program.Start("serve");
        while (program.PutAway().Count <= dropped) await Task.Delay(100, Ct);
        Assert.Equal(dropped, (await CheckAsync(program, last)).Count);

        async Task DropAsync()
        {
            dropped++;
            await program.DropAsync($"reading-{dropped:0000}.csv", $"{A.ReadingsHeader}\n{A.Row(counterH: dropped)}\n");
            await Task.Delay(chance.Next(80), Ct);
        }
    }

    /// <summary>Kills the worker and gives the counters of the readings that are stored then.</summary>
    private static async Task<IReadOnlyList<double>> CheckAsync(KilledProgram program, System.Diagnostics.Process serving)
    {
        Assert.False(serving.HasExited);
        serving.Kill(entireProcessTree: true);
        await serving.WaitForExitAsync(Ct);
        await using var db = program.Db();
        var stored = await db.Readings.Select(r => r.CounterH!.Value).ToListAsync(Ct);
        Assert.Equal(stored.Distinct().Count(), stored.Count);
        var putAway = program.PutAway().Where(name => name != "chains.csv")
            .Select(name => double.Parse(name.Split('-', '.')[1], CultureInfo.InvariantCulture));
        Assert.Empty(putAway.Except(stored));
        return stored;
    }
}
