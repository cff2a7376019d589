using WearWatch.Plant.Rounds;

namespace WearWatch.Dashboard.Tests.Floor;

public sealed class FloorQueryTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => default;

    public ValueTask DisposeAsync() => host.DisposeAsync();

    // 121.9 mm over 48 pitches of 25.4 mm is a slipped decimal point: no chain is 90 % short.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task An_impossible_reading_asks_to_measure_again_until_that_was_done(bool measuredSince)
    {
        await using (var db = await host.OpenAsync())
        {
            var chain = A.Chain();
            db.Chains.Add(chain);
            await db.SaveChangesAsync(Ct);
            db.Readings.Add(A.Reading(chain.Id, "slip", 121.9));
            if (measuredSince) db.Readings.Add(A.Reading(chain.Id, "again", 1225));
            await db.SaveChangesAsync(Ct);
        }

        var chainOnFloor = Assert.Single(await host.Get<FloorQuery>().AskAsync(Ct));
        Assert.Equal(!measuredSince, chainOnFloor.LastDoesNotFit);
    }
}
