using Microsoft.EntityFrameworkCore;
using A = WearWatch.Worker.Tests.A;

namespace WearWatch.Servers.Tests.Kills;

/// <summary>Imports are killed in their midst.</summary>
[Collection(nameof(OneAtATime))]
public sealed class KilledImportTests
{
    private const int Rows = 16_000;
    private const int Chains = 100;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory(Explicit = true)]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_file_whose_import_was_killed_is_in_the_memory_once_after_it_was_taken_in_again(bool onPostgres)
    {
        await using var program = await KilledProgram.OnAsync(onPostgres);
        var all = 0;
        await new KillMoments(program).KillAsync(
            async () => await program.RunAsync("import", await WriteAsync(0)),
            async round => ["import", await WriteAsync(round)],
            async (round, output) =>
            {
                var mark = $"K{round}-";
                await using var db = program.Db();
                var after = await db.Readings.CountAsync(
                    r => db.Chains.Any(c => c.Id == r.ChainId && c.Name.StartsWith(mark)), Ct);
                // Of each chain three rows are held until the file is through.
                Assert.True(after is 0 or Rows || (after + 3 * Chains) % 4_000 == 0, $"{after} readings");
                if (output.Contains("readings.csv: ", StringComparison.Ordinal)) Assert.Equal(Rows, after);
                Assert.Contains(
                    $"readings.csv: {Rows - after} new, {after} already known, 0 waiting for a person, 0 refused",
                    await program.RunAsync("import", program.At($"{round}")), StringComparison.Ordinal);
                all = round;
            });
        await using var db = program.Db();
        Assert.Equal((all + 1) * Rows, await db.Readings.CountAsync(Ct));
        Assert.Equal((all + 1) * Rows, await db.Readings.Select(r => new { r.ChainId, r.CounterH }).Distinct().CountAsync(Ct));

        async Task<string> WriteAsync(int round)
        {
            var folder = Directory.CreateDirectory(program.At($"{round}")).FullName;
            await File.WriteAllTextAsync(Path.Combine(folder, "chains.csv"), "chain,pitch_mm\n"
                + string.Concat(Enumerable.Range(0, Chains).Select(i => $"K{round}-{i},25.4\n")), Ct);
            await File.WriteAllLinesAsync(Path.Combine(folder, "readings.csv"), [A.ReadingsHeader, .. Enumerable.Range(0, Rows)
                .Select(i => A.Row($"K{round}-{i % Chains}", 100 * (i / Chains), 0.0005 * (i / Chains)))], Ct);
            return folder;
        }
    }
}
