using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Worker.Jobs;

namespace WearWatch.Worker.Tests.Jobs;

public sealed class FleetSchoolTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_model_is_trained_once_a_night_of_the_plant_and_the_next_review_takes_it_up()
    {
        await using var plant = await TestPlant.OpenAsync(("TrainingHour", "3"));
        await plant.Get<PlantSettings>().ChangeAsync(p => p.TimeZone = "Europe/Vienna", Ct);
        await plant.Import.ImportAsync(A.Folder(A.Data("fleet")), null, Ct);
        var school = plant.Get<FleetSchool>();
        Assert.False(await school.RunOnceAsync(Ct)); // by day, and there is a model already
        await plant.Import.ImportAsync(
            [
                A.File("chains.csv", "chain,pitch_mm,load_rel,speed_m_s\nnew,25.4,0.5,1\n"),
                A.Readings([.. Enumerable.Range(1, 8).Select(i => A.Row("new", 500 * i, 0.2 * i))]),
            ], null, Ct);

        plant.Clock.SetUtcNow(TestPlant.Start.Date.AddDays(1).AddMinutes(30)); // 02:30 in Vienna's summer
        Assert.False(await school.RunOnceAsync(Ct));
        plant.Clock.Advance(TimeSpan.FromHours(1));
        Assert.True(await school.RunOnceAsync(Ct));
        Assert.False(await school.RunOnceAsync(Ct));
        await plant.Get<TimelyReview>().RunOnceAsync(Ct);
        await using var db = plant.Db();
        var newest = await db.FleetModels.OrderByDescending(m => m.Id).Select(m => m.Version).FirstAsync(Ct);
        Assert.Equal(2, await db.FleetModels.CountAsync(Ct));
        // Behind it stands what the plant's own chains taught of its constants.
        Assert.All(
            await db.Forecasts.Where(f => f.IsLatest).ToListAsync(Ct),
            f => Assert.StartsWith(newest, f.ModelVersion, StringComparison.Ordinal));
    }
}
