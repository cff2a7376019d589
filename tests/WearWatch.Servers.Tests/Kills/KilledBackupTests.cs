using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Safekeeping;
using A = WearWatch.Worker.Tests.A;

namespace WearWatch.Servers.Tests.Kills;

/// <summary>Backups are killed in their midst.</summary>
[Collection(nameof(OneAtATime))]
public sealed class KilledBackupTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory(Explicit = true)]
    [InlineData(false)]
    [InlineData(true)]
    public async Task What_is_called_a_backup_is_whole_though_backups_are_killed(bool onPostgres)
    {
        await using var program = await KilledProgram.OnAsync(onPostgres);
        await program.RunAsync("import", A.Data("fleet"));
        await using var db = program.Db();
        var readings = await db.Readings.CountAsync(Ct);
        await new KillMoments(program).KillAsync(
            () => program.RunAsync("backup", program.At("backups")),
            _ => Task.FromResult<string[]>(["backup", program.At("backups")]),
            async (_, output) =>
            {
                var named = Directory.GetFiles(program.At("backups"), Backups.Pattern);
                if (output.Contains("checked", StringComparison.Ordinal))
                    Assert.Contains(named, path => output.Contains(path, StringComparison.Ordinal));
                foreach (var path in named)
                {
                    var found = await Check.FileAsync(path, Ct);
                    Assert.Empty(found.Faults);
                    Assert.Equal(readings, found.Rows["Readings"]);
                    File.Delete(path);
                }
            });
        await program.RunAsync("backup", program.At("backups"));
        Assert.Equal(readings, await db.Readings.CountAsync(Ct));
    }
}
