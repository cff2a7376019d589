using System.Text.Json;
using WearWatch.Plant.Tracking;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Tracking;

public sealed class KeptConstantsTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_newest_constants_come_back_to_the_bit_and_every_forecast_made_with_others_is_due()
    {
        await using var plant = await TestPlant.OpenAsync();
        var chain = await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(), Ct);
        Assert.Empty(await plant.Get<DueReviews>().FindAsync(Ct));

        // Figures without an end in binary; the older row must not be the one that is found.
        var own = WearConstants.Default with { RateDrift = 0.1 / 3, RunInHours = Math.PI * 10, JumpDown = -Math.Sqrt(0.5) };
        foreach (var constants in new[] { WearConstants.Default with { RateDrift = 0.5 }, own })
        {
            await using var db = plant.Db();
            db.Calibrations.Add(new CalibrationRow
            {
                MadeAt = plant.Clock.GetUtcNow(),
                Chains = 30,
                LogEvidenceGain = 12,
                Constants = JsonSerializer.Serialize(constants, JsonSerializerOptions.Default),
            });
            await db.SaveChangesAsync(Ct);
        }

        var kept = (await plant.Get<Calibrations>().KnowledgeAsync(Ct)).Constants;
        Assert.Equal(own.Onsets, kept.Onsets);
        Assert.Equal(own with { Onsets = [] }, kept with { Onsets = [] });
        Assert.Equal([chain], await plant.Get<DueReviews>().FindAsync(Ct));
    }
}
