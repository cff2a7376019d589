using System.Globalization;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Plant.Tracking;
using WearWatch.Storage.Rows;
using WearWatch.Storage.Safekeeping;

namespace WearWatch.Worker.Tests.Safekeeping;

/// <summary>Backups are whole, come back with the same forecasts, and a damaged one is refused.</summary>
public sealed class SafekeepingTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_is_restored_elsewhere_has_every_row_and_gives_the_same_forecasts_bit_for_bit()
    {
        await using var plant = await MillAsync();
        var made = await plant.Get<Backups>().BackUpAsync(At(plant, "backups"), null, Ct);
        Assert.Empty(made.Faults);
        Assert.Equal(1, made.Rows["Photos"]);

        await using var other = await TestPlant.OpenAsync();
        var restored = await other.Get<Restoration>().RestoreAsync(made.Path, Ct);
        Assert.All(restored.Rows, table => Assert.Equal(made.Rows[table.Key], table.Value));
        var chains = await IdsAsync(plant);
        Assert.Equal(chains, await IdsAsync(other));
        var (here, there) = (await ForecastsAsync(plant, chains), await ForecastsAsync(other, chains));
        Assert.Equal(60, here.Count);
        Assert.Equal(here, there);

        // It goes on: new rows get ids after those that came back.
        await using var db = other.Db();
        var last = await db.Readings.MaxAsync(r => r.Id, Ct);
        await other.Desk.TakeReadingAsync(A.Reading("C000", counterH: 18_900, takenAt: TestPlant.Start), Ct);
        Assert.Equal(last + 1, await db.Readings.MaxAsync(r => r.Id, Ct));
    }

    [Fact]
    public async Task A_backup_is_made_while_others_write_and_is_a_moment_of_it()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(Ct);
        var writer = Task.Run(
            async () =>
            {
                for (var h = 100; !stop.IsCancellationRequested; h += 10)
                    await plant.Desk.TakeReadingAsync(A.Reading(counterH: h, takenAt: TestPlant.Start.AddHours(-4)), Ct);
            }, Ct);
        for (var i = 0; i < 3; i++)
        {
            var made = await plant.Get<Backups>().BackUpAsync(At(plant, "backups"), keep: 2, Ct);
            Assert.Empty(made.Faults);
            Assert.Equal(made.Rows["Readings"], (await Check.FileAsync(made.Path, Ct)).Rows["Readings"]);
            plant.Clock.Advance(TimeSpan.FromSeconds(1));
        }

        await stop.CancelAsync();
        await writer;
        Assert.Equal(2, Directory.GetFiles(At(plant, "backups")).Length);
    }

    [Fact]
    public async Task A_backup_is_for_the_eyes_of_its_maker_only()
    {
        await using var plant = await TestPlant.OpenAsync();
        var made = await plant.Get<Backups>().BackUpAsync(At(plant, "backups"), null, Ct);
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(made.Path));
        else Assert.True(File.Exists(made.Path));
    }

    [Fact]
    public async Task What_a_backup_that_was_killed_left_behind_is_cleared_away_once_it_is_a_day_old()
    {
        await using var plant = await TestPlant.OpenAsync();
        Directory.CreateDirectory(At(plant, "backups"));
        string[] left = ["wearwatch-20260101-000000.db.unfinished", "wearwatch-20260531-120000.db.unfinished", "notes.txt"];
        TimeSpan[] ages = [TimeSpan.FromDays(150), TimeSpan.FromHours(22), TimeSpan.FromDays(150)];
        foreach (var (name, age) in left.Zip(ages))
        {
            await File.WriteAllTextAsync(Path.Combine(At(plant, "backups"), name), "half", Ct);
            File.SetLastWriteTimeUtc(Path.Combine(At(plant, "backups"), name), (TestPlant.Start - age).UtcDateTime);
        }

        var made = await plant.Get<Backups>().BackUpAsync(At(plant, "backups"), null, Ct);
        Assert.Equal(
            [left[2], Path.GetFileName(made.Path), left[1]],
            Directory.GetFiles(At(plant, "backups")).Select(path => Path.GetFileName(path)).OrderBy(n => n.Length));
    }

    [Fact]
    public async Task A_damaged_backup_and_a_place_that_is_not_empty_are_refused_with_words()
    {
        await using var plant = await MillAsync();
        var made = await plant.Get<Backups>().BackUpAsync(At(plant, "backups"), null, Ct);
        var taken = await Assert.ThrowsAsync<InvalidDataException>(() => plant.Get<Restoration>().RestoreAsync(made.Path, Ct));
        Assert.Contains("Restore into an empty", taken.Message, StringComparison.Ordinal);

        var bytes = await File.ReadAllBytesAsync(made.Path, Ct);
        for (var i = bytes.Length / 2; i < bytes.Length / 2 + 20_000; i++) bytes[i] ^= 0x5a;
        await File.WriteAllBytesAsync(made.Path, bytes, Ct);
        await using var other = await TestPlant.OpenAsync();
        var damaged = await Assert.ThrowsAsync<InvalidDataException>(() => other.Get<Restoration>().RestoreAsync(made.Path, Ct));
        Assert.Contains("damaged", damaged.Message, StringComparison.Ordinal);
        await using var db = other.Db();
        Assert.False(await db.Chains.AnyAsync(Ct));
    }

    private static string At(TestPlant plant, string name) => Path.Combine(plant.Folder.Root, name);

    private static async Task<TestPlant> MillAsync()
    {
        var plant = await TestPlant.OpenAsync();
        await plant.Import.ImportAsync(A.Folder(A.Data("fleet")), null, Ct);
        await plant.Models.TrainAsync(Ct);
        await plant.Review.ReviewAsync(null, null, Ct);
        await using var db = plant.Db();
        db.Photos.Add(new PhotoRow
        {
            ChainId = await db.Chains.Select(c => c.Id).FirstAsync(Ct),
            Key = "photo",
            LookKey = "look",
            Point = InspectionPoint.CrackedOrTurnedParts,
            Jpeg = [0xff, 0xd8, 0xff, 0xd9],
        });
        await db.SaveChangesAsync(Ct);
        return plant;
    }

    private static async Task<List<int>> IdsAsync(TestPlant plant)
    {
        await using var db = plant.Db();
        return await db.Chains.OrderBy(c => c.Id).Select(c => c.Id).ToListAsync(Ct);
    }

    private static async Task<List<string>> ForecastsAsync(TestPlant plant, List<int> chains) =>
        [.. (await plant.Get<ChainReview>().AssessAsync(chains, Ct)).Select(Said)];

    private static string Said(ReviewedChain chain) => $"{chain.Raw.Card.Name} {chain.ModelVersion} " + string.Join(' ',
        Enumerable.Range(1, 99).Select(p => chain.Assessment.Forecast.Quantile(p)?.ToString("R", CultureInfo.InvariantCulture)));
}
