using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Tracking;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Tracking;

public sealed class CalibrationsTests(ShiftedPlant shifted) : IClassFixture<ShiftedPlant>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_plant_whose_chains_have_shown_nothing_keeps_the_defaults()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        Assert.False(await plant.Get<Calibrations>().CalibrateAsync(Ct));
        var knowledge = await plant.Get<Calibrations>().KnowledgeAsync(Ct);
        Assert.Same(WearConstants.Default, knowledge.Constants);
        Assert.Equal(WearPrior.Broad.Source.ToString(), knowledge.Version);
    }

    [Fact]
    public async Task A_plant_of_another_world_gets_constants_of_its_own_and_its_forecasts_are_made_anew_with_them()
    {
        var plant = shifted.Plant;
        var knowledge = await plant.Get<Calibrations>().KnowledgeAsync(Ct);
        Assert.NotEqual(WearConstants.Default.RateDrift, knowledge.Constants.RateDrift);
        Assert.Equal(1, knowledge.Constants.Onsets.Sum(o => o.Weight), 12);

        await plant.Review.ReviewAsync(await plant.Get<DueReviews>().FindAsync(Ct), null, Ct);
        await using var db = plant.Db();
        Assert.All(await db.Forecasts.Where(f => f.IsLatest).ToListAsync(Ct),
            f => Assert.Equal(knowledge.Version, f.ModelVersion));
        Assert.Empty(await plant.Get<DueReviews>().FindAsync(Ct));
    }

    [Fact]
    public async Task Constants_are_the_same_to_the_bit_after_they_were_kept()
    {
        var knowledge = await shifted.Plant.Get<Calibrations>().KnowledgeAsync(Ct);
        var again = await shifted.Plant.Get<Calibrations>().KnowledgeAsync(Ct);
        Assert.Equal(knowledge.Constants.Onsets, again.Constants.Onsets);
        Assert.Equal(knowledge.Constants with { Onsets = [] }, again.Constants with { Onsets = [] });
    }
}
