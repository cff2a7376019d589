using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;
using WearWatch.Storage.Safekeeping;
using WearWatch.Worker.Jobs;

namespace WearWatch.Worker.Tests.Jobs;

public sealed class BackupWatchTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Once_a_night_a_backup_is_made_that_can_be_opened_and_the_oldest_go()
    {
        await using var plant = await TestPlant.OpenAsync(("BackupFolder", "kept"), ("BackupsKept", "2"));
        await plant.AddChainAsync();
        var watch = plant.Get<BackupWatch>();
        for (var night = 0; night < 4; night++)
        {
            Assert.True(await watch.RunOnceAsync(Ct));
            Assert.False(await watch.RunOnceAsync(Ct));
            plant.Clock.Advance(TimeSpan.FromDays(1));
        }

        var files = Directory.GetFiles(Path.Combine(plant.Folder.Root, "kept"));
        Assert.Equal(2, files.Length);
        Assert.Equal(1, (await Check.FileAsync(files.Max()!, Ct)).Rows["Chains"]);
        await using var db = plant.Db();
        Assert.Equal(4, await db.SecurityEvents.CountAsync(e => e.Kind == SecurityEventKind.BackedUp, Ct));
    }

    [Fact]
    public async Task A_backup_that_fails_raises_a_notice_and_the_next_good_one_ends_it()
    {
        await using var plant = await TestPlant.OpenAsync(("BackupFolder", "kept"));
        var blocked = Path.Combine(plant.Folder.Root, "kept");
        await File.WriteAllTextAsync(blocked, "a file where the folder should be", Ct);
        await Assert.ThrowsAnyAsync<IOException>(() => plant.Get<BackupWatch>().RunOnceAsync(Ct));
        await using var db = plant.Db();
        var notice = await db.PlantNotices.AsNoTracking().SingleAsync(Ct);
        Assert.Equal((PlantNoticeKind.BackupMissing, null), (notice.Kind, notice.EndedAt));
        Assert.Contains("none was ever made", notice.Why.ToString(), StringComparison.Ordinal);
        File.Delete(blocked);
        Assert.True(await plant.Get<BackupWatch>().RunOnceAsync(Ct));
        Assert.NotNull((await db.PlantNotices.AsNoTracking().SingleAsync(Ct)).EndedAt);
    }
}
